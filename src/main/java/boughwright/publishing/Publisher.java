package boughwright.publishing;

import boughwright.house.Change;
import boughwright.house.Comparison;
import boughwright.house.Complaint;
import boughwright.house.EditionTexts;
import boughwright.house.HouseCheck;
import boughwright.house.HouseRules;
import boughwright.house.TradeFacts;
import boughwright.measure.Units;
import boughwright.rulebook.Edition;
import boughwright.rulebook.Rulebook;
import boughwright.rulebook.RulebookFault;
import boughwright.text.Text;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Lets a draft go live: tries it whole, asks for what must be answered first, and keeps it as an edition. Nothing is half done. */
@Component
public class Publisher {

    private static final int LONGEST_TITLE = 60;
    private static final int LONGEST_NOTE = 2_000;

    private final ShopDoor shop;
    private final Editions editions;
    private final Drafts drafts;
    private final References references;
    /** Kept, since it remembers the pages that have not changed. */
    private final HouseCheck check = new HouseCheck(Units.FEET);

    Publisher(ShopDoor shop, Editions editions, Drafts drafts, References references) {
        this.shop = shop;
        this.editions = editions;
        this.drafts = drafts;
        this.references = references;
    }

    /**
     * What a draft would be as an edition.
     *
     * @param faults what must be mended first
     * @param doubts what the publisher must acknowledge: broken facts of the trade, numbers that fall
     * @param broken what reference briefs of the shop no longer give; to be published only with a written reason
     * @param rulebook empty when there are faults
     */
    public record Trial(List<String> faults, List<String> doubts, List<String> broken, Optional<Rulebook> rulebook) {
    }

    /** How a draft goes live. */
    public record Wish(String title, String note, String author, LocalDate startsOn, boolean acknowledged, String override) {
    }

    /** What came of publishing. */
    public sealed interface Outcome {

        record Published(int edition) implements Outcome {
        }

        record Refused(List<String> reasons) implements Outcome {
        }
    }

    /** The live edition's rules, to begin a draft from. */
    public HouseRules rules(int edition) {
        KeptEdition kept = editions.edition(edition).orElseThrow(() -> new IllegalArgumentException("no edition " + edition));
        return ((EditionTexts.Reading.Read) EditionTexts.read(edition(kept), kept.texts())).rules();
    }

    private static Edition edition(KeptEdition kept) {
        try {
            return Edition.read(kept.texts().get(EditionTexts.EDITION));
        } catch (com.fasterxml.jackson.core.JsonProcessingException broken) {
            throw new IllegalStateException("edition " + kept.number() + " could not be read", broken);
        }
    }

    /** Tries a draft whole, as it would be in service. */
    public synchronized Trial trial(HouseRules rules) {
        return trial(rules, "draft", Text.of("publishing.draft"));
    }

    private Trial trial(HouseRules rules, String id, String title) {
        List<Complaint> complaints = check.of(rules);
        List<String> faults = complaints.stream().filter(Complaint::fault).map(Complaint::sentence).toList();
        if (!faults.isEmpty()) {
            return new Trial(faults, List.of(), List.of(), Optional.empty());
        }
        Rulebook.Opening opening = shop.tried(texts(rules, id, title));
        if (opening instanceof Rulebook.Opening.Faulty faulty) {
            return new Trial(faulty.faults().stream().map(RulebookFault::sentence).toList(), List.of(), List.of(), Optional.empty());
        }
        Rulebook rulebook = ((Rulebook.Opening.Open) opening).rulebook();
        List<String> doubts = new ArrayList<>(complaints.stream().map(Complaint::sentence).toList());
        doubts.addAll(TradeFacts.broken(rulebook));
        List<String> broken = references.own().stream().flatMap(own -> own.brief().broken(rulebook).stream()).toList();
        return new Trial(List.of(), doubts, broken, Optional.of(rulebook));
    }

    private SortedMap<String, String> texts(HouseRules rules, String id, String title) {
        return EditionTexts.of(rules, id, title, shop.designer().rulebook().edition());
    }

    /** Publishes a draft and discards it, unless somebody has gone on with it meanwhile; refused, everything stays as it is. */
    public synchronized Outcome publish(HouseRules rules, int basedOn, Wish wish) {
        List<String> reasons = new ArrayList<>();
        String title = wish.title().strip();
        if (title.isEmpty() || title.length() > LONGEST_TITLE) {
            reasons.add(Text.of("publishing.title", LONGEST_TITLE));
        }
        if (editions.hasTitle(title)) {
            reasons.add(Text.of("publishing.title.taken", title));
        }
        if (wish.author().isBlank() || wish.author().length() > LONGEST_TITLE) {
            reasons.add(Text.of("publishing.author", LONGEST_TITLE));
        }
        if (wish.note().length() > LONGEST_NOTE || wish.override().length() > LONGEST_NOTE) {
            reasons.add(Text.of("publishing.note", LONGEST_NOTE));
        }
        if (wish.startsOn().isBefore(editions.today())) {
            reasons.add(Text.of("publishing.past"));
        }
        String id = editions.freeId(title);
        Trial trial = trial(rules, id, title);
        reasons.addAll(trial.faults());
        if (!trial.doubts().isEmpty() && !wish.acknowledged()) {
            reasons.add(Text.of("publishing.doubts", trial.doubts().size()));
        }
        if (!trial.broken().isEmpty() && wish.override().isBlank()) {
            reasons.add(Text.of("publishing.broken", trial.broken().size()));
        }
        if (!reasons.isEmpty()) {
            return new Outcome.Refused(reasons);
        }
        List<Change> changes = Comparison.of(rules(basedOn), rules, Units.FEET);
        KeptEdition edition = new KeptEdition(0, id, title, wish.note().strip(), wish.author().strip(), KeptEdition.Origin.STAFF, Optional.of(basedOn), null,
                texts(rules, id, title), trial.broken().isEmpty() ? "" : wish.override().strip());
        Optional<Integer> number = shop.publish(edition, trial.rulebook().orElseThrow(), wish.startsOn(),
                changes.stream().map(Change::sentence).collect(Collectors.joining("\n")));
        if (number.isEmpty()) {
            return new Outcome.Refused(List.of(Text.of("publishing.title.taken", title)));
        }
        drafts.open().filter(draft -> draft.rules().equals(rules)).ifPresent(draft -> drafts.discard(draft.mark()));
        return new Outcome.Published(number.get());
    }

    /** What was to go live later does not. */
    public void withdraw(int publication, String author) {
        editions.withdraw(publication, author);
    }
}
