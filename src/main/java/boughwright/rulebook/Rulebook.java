package boughwright.rulebook;

import boughwright.brief.Brief;
import boughwright.brief.ShopChoices;
import boughwright.needs.AccentChoice;
import boughwright.measure.Units;
import boughwright.needs.Adjustments;
import boughwright.needs.Advice;
import boughwright.needs.Caution;
import boughwright.needs.Climb;
import boughwright.needs.Demand;
import boughwright.needs.Density;
import boughwright.needs.HouseNumber;
import boughwright.needs.HouseRule;
import boughwright.needs.LightLoad;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Reason;
import boughwright.needs.RibbonMeasures;
import boughwright.needs.TopperReach;
import boughwright.text.Text;
import boughwright.text.Words;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One edition of the house rules, ready to be asked. Immutable and safe for several threads.
 *
 * <p>Rules run in two phases that are chosen here: first over the brief, for what the kit must be like; then, when the kit is
 * known, over the brief and the facts that follow from the kit, for the cautions.
 */
public final class Rulebook {

    private final Edition edition;
    private final Sizing sizing;
    private final DmnTables tables;
    private final StyleRules rules;

    private Rulebook(Edition edition, DmnTables tables, StyleRules rules) {
        this.edition = edition;
        this.tables = tables;
        this.sizing = new Sizing(tables, rules.words());
        this.rules = rules;
    }

    /** What came of opening a rulebook. */
    public sealed interface Opening {

        record Open(Rulebook rulebook) implements Opening {
        }

        record Faulty(List<RulebookFault> faults) implements Opening {
        }
    }

    /** Where the files of a rulebook are read from: a folder, an archive. */
    @FunctionalInterface
    public interface Source {

        /** @throws IOException when there is no such file */
        String read(String path) throws IOException;
    }

    /** Reads and compiles {@code edition.json}, the files that it lists and the words beside them; tables and rules compile side by side. */
    public static Opening open(Source source) throws IOException {
        List<RulebookFault> faults = new ArrayList<>();
        Words words = RuleWords.read(source, faults);
        Edition edition;
        try {
            edition = Edition.read(source.read("edition.json"), words);
        } catch (JsonProcessingException | IllegalArgumentException e) {
            return new Opening.Faulty(List.of(RulebookFault.ofFile("edition.json", 0, Text.of("rulebook.edition", e.getMessage()))));
        }
        Map<String, String> tableTexts = texts(source, edition.sizing());
        Map<String, String> ruleTexts = texts(source, edition.rules());
        DmnCompilation[] compiledTables = new DmnCompilation[1];
        Throwable[] broken = new Throwable[1];
        Thread beside = new Thread(Text.carried(() -> compiledTables[0] = new DmnCompiler().compile(tableTexts)), "decision tables");
        beside.setUncaughtExceptionHandler((thread, thrown) -> broken[0] = thrown);
        beside.start();
        DrlCompilation compiledRules = new DrlCompiler().compile(ruleTexts);
        try {
            beside.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while the decision tables were compiled", e);
        }
        if (broken[0] != null) {
            throw new IllegalStateException("the decision tables could not be compiled", broken[0]);
        }
        if (compiledTables[0] instanceof DmnCompilation.Faulty faulty) {
            faults.addAll(faulty.faults());
        }
        if (compiledRules instanceof DrlCompilation.Faulty faulty) {
            faults.addAll(faulty.faults());
        }
        if (!faults.isEmpty()) {
            return new Opening.Faulty(faults);
        }
        return joined(edition, ((DmnCompilation.Sound) compiledTables[0]).tables(), ((DrlCompilation.Sound) compiledRules).rules().withWords(words));
    }

    /** Reads {@code edition.json} and the tables that it lists and joins them with rules that are compiled already and their words; rule files are not read. */
    public static Opening open(Source source, StyleRules rules) throws IOException {
        Edition edition;
        try {
            edition = Edition.read(source.read("edition.json"), rules.words());
        } catch (JsonProcessingException | IllegalArgumentException e) {
            return new Opening.Faulty(List.of(RulebookFault.ofFile("edition.json", 0, Text.of("rulebook.edition", e.getMessage()))));
        }
        DmnCompilation compiled = new DmnCompiler().compile(texts(source, edition.sizing()));
        if (compiled instanceof DmnCompilation.Faulty faulty) {
            return new Opening.Faulty(faulty.faults());
        }
        return joined(edition, ((DmnCompilation.Sound) compiled).tables(), rules);
    }

    private static Opening joined(Edition edition, DmnTables tables, StyleRules rules) {
        List<RulebookFault> faults = Completeness.faults(tables, rules, edition.house());
        return faults.isEmpty() ? new Opening.Open(new Rulebook(edition, tables, rules)) : new Opening.Faulty(faults);
    }

    private static Map<String, String> texts(Source source, List<String> paths) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        for (String path : paths) {
            texts.put(path, source.read(path));
        }
        return texts;
    }

    public Edition edition() {
        return edition;
    }

    public ShopChoices choices() {
        return edition.choices();
    }

    /** What the tables of a topic are called, as reasons name them. */
    public String title(String topic) {
        return rules.words().of(tables.title("sizing/" + topic + ".dmn"));
    }

    /** What its texts are in other languages. */
    public Words words() {
        return rules.words();
    }

    /** The tables as they are written, for those who want to read or check them. */
    public DmnTables tables() {
        return tables;
    }

    /** The style and safety rules, to be joined with the tables of another edition. */
    public StyleRules styleRules() {
        return rules;
    }

    /** Every style and safety rule by id. */
    public List<RuleName> rules() {
        return List.copyOf(rules.names());
    }

    /** What the tree needs, and what the house asks of the kit. */
    public Needs needs(Brief brief, Adjustments adjustments) {
        List<Need> needs = Sizer.needs(sizing, brief, adjustments, edition.house().count(HouseNumber.CLUSTER_FLOWERS));
        List<Object> facts = facts(brief);
        List<Finding<Object>> findings = rules.run(facts, Object.class);
        List<HouseRule> demands = findings.stream().filter(f -> f.fact() instanceof Demand)
                .map(f -> new HouseRule((Demand) f.fact(), reason(f.rule(), brief.units()))).toList();
        RibbonMeasures ribbon = only(findings, RibbonMeasures.class).findFirst()
                .orElseThrow(() -> new IllegalStateException("no rule gives the measures of a ribbon run for " + brief.tree()));
        List<AccentChoice> accents = only(findings, AccentChoice.class).sorted(Comparator.comparingDouble(AccentChoice::leastGap)).toList();
        return new Needs(edition.id(), needs, demands, ribbon, accents, edition.house().weights());
    }

    /**
     * What to take care of, in the order of the rules' ids.
     *
     * @param lights empty when the kit has none
     * @param topper empty when it has none
     */
    public List<Caution> cautions(Brief brief, Needs needs, Climb climb, Optional<LightLoad> lights, Optional<TopperReach> topper) {
        List<Object> facts = facts(brief);
        int stems = needs.bought().stream().filter(n -> n.role().stem()).mapToInt(Need::quantity).sum();
        facts.add(new Density(stems, brief.tree().height().feet()));
        facts.add(climb);
        lights.ifPresent(facts::add);
        topper.ifPresent(facts::add);
        return rules.run(facts, Advice.class).stream()
                .map(f -> new Caution(f.rule().id(), edition.house().fill(words().of(f.fact().text()), f.fact()), words().of(f.fact().source()))).toList();
    }

    private static <T> Stream<T> only(List<Finding<Object>> findings, Class<T> wanted) {
        return findings.stream().map(Finding::fact).filter(wanted::isInstance).map(wanted::cast);
    }

    private List<Object> facts(Brief brief) {
        return new ArrayList<>(List.of(edition.house(), brief.tree(), brief.room(), brief.household(), brief.look(), brief.palette(), brief.abundance()));
    }

    private Reason reason(RuleName rule, Units units) {
        String sentence = edition.house().fill(words().of(rule.sentence()), units);
        return new Reason(sentence, rule.id(), sentence + ".");
    }
}
