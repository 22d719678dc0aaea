package boughwright.rulebook;

import boughwright.text.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.kie.api.KieBase;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;

/**
 * The style constraints and cautions of one rulebook edition, ready to run.
 *
 * <p>Holds no facts between runs; any number of threads may run it at once.
 */
public final class StyleRules {

    /** Firings after which a run is given up. A consultation of a large household fires well under a hundred. */
    static final int MOST_FIRINGS = 10_000;

    private final KieBase base;
    private final SortedSet<RuleName> names;
    private final Words words;

    StyleRules(KieBase base, Set<String> rules) {
        this.base = base;
        var read = new TreeSet<RuleName>();
        rules.forEach(rule -> read.add(RuleName.read(rule).orElseThrow()));
        this.names = Collections.unmodifiableSortedSet(read);
        this.words = Words.NONE;
    }

    private StyleRules(KieBase base, SortedSet<RuleName> names, Words words) {
        this.base = base;
        this.names = names;
        this.words = words;
    }

    /** The same rules with what their sentences, and those of the tables beside them, are in other languages. */
    StyleRules withWords(Words other) {
        return new StyleRules(base, names, other);
    }

    /** What the sentences of the folder are in other languages. */
    Words words() {
        return words;
    }

    /** Every rule of the edition, by id. */
    public SortedSet<RuleName> names() {
        return names;
    }

    /**
     * Runs all rules over the facts and returns what they inserted of one type, each with the rule that inserted it.
     *
     * <p>The list is ordered by rule id, then by the content of the fact, whatever the order of {@code facts}; a rule that concludes the
     * same several times is listed once. Two rules that conclude the same are both listed.
     *
     * @throws IllegalStateException when the rules do not come to rest within 10,000 firings
     */
    public <T> List<Finding<T>> run(Collection<?> facts, Class<T> wanted) {
        return EngineLoader.during(() -> findings(facts, wanted));
    }

    private <T> List<Finding<T>> findings(Collection<?> facts, Class<T> wanted) {
        var findings = new ArrayList<Finding<T>>();
        var session = base.newKieSession();
        try {
            facts.forEach(session::insert);
            // Listening tells which rule inserted a fact, so no rule has to say its own name.
            session.addEventListener(new DefaultRuleRuntimeEventListener() {
                @Override
                public void objectInserted(ObjectInsertedEvent event) {
                    if (wanted.isInstance(event.getObject())) {
                        findings.add(new Finding<>(wanted.cast(event.getObject()), RuleName.read(event.getRule().getName()).orElseThrow()));
                    }
                }
            });
            if (session.fireAllRules(MOST_FIRINGS + 1) > MOST_FIRINGS) {
                throw new IllegalStateException("the rules did not come to rest after " + MOST_FIRINGS + " firings");
            }
        } finally {
            session.dispose();
        }
        return findings.stream().distinct().sorted(Finding.IN_RULE_ORDER).toList();
    }
}
