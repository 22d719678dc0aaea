package boughwright.proposal;

import boughwright.brief.Brief;
import boughwright.brief.BriefReader;
import boughwright.brief.BriefReading;
import boughwright.brief.Look;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.CatalogueReader;
import boughwright.catalogue.CatalogueReading;
import boughwright.catalogue.Product;
import boughwright.kit.Kit;
import boughwright.kit.KitRequest;
import boughwright.kit.KitSolver;
import boughwright.kit.Patience;
import boughwright.kit.Swap;
import boughwright.measure.Money;
import boughwright.needs.Adjustments;
import boughwright.rulebook.Rulebook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The rulebook and the catalogues as they ship, opened once for all tests, and the steps from a brief's text to its outcome. */
public final class ProposalFixture {

    private ProposalFixture() {
    }

    private static final class Shipped {
        static final Rulebook RULEBOOK = openRulebook();
        static final KitSolver SOLVER = new KitSolver();
        static final Designer SEASON = new Designer(RULEBOOK, catalogue(text("season.csv")), SOLVER);
        static final Designer SMALL = new Designer(RULEBOOK, catalogue(text("small.csv")), SOLVER);
    }

    public static Rulebook rulebook() {
        return Shipped.RULEBOOK;
    }

    public static KitSolver solver() {
        return Shipped.SOLVER;
    }

    /** The best kit, if any fits. */
    public static Optional<Kit> best(KitRequest request) {
        return solver().best(request, Patience.usual());
    }

    /** What the cheapest kit costs, if any fits. */
    public static Optional<Money> least(KitRequest request) {
        return solver().least(request, Patience.usual());
    }

    /** Products that could take the place of the one in a slot, the best first. */
    public static List<Product> others(Designer designer, Proposal proposal, String slot) {
        return designer.swaps(proposal, slot, 12, Patience.usual()).stream().filter(Swap::possible).map(Swap::product).toList();
    }

    /** Over the full season's catalogue. */
    public static Designer season() {
        return Shipped.SEASON;
    }

    /** Over the small catalogue, which has products for the first look only. */
    public static Designer small() {
        return Shipped.SMALL;
    }

    public static Designer designer(Catalogue catalogue) {
        return new Designer(rulebook(), catalogue, solver());
    }

    /** The shipped rulebook, compiled anew. */
    public static Rulebook openRulebook() {
        try {
            var opening = Rulebook.open(path -> Files.readString(Path.of("rules", path)));
            if (opening instanceof Rulebook.Opening.Open open) {
                return open.rulebook();
            }
            throw new AssertionError("the shipped rulebook has faults: " + opening);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The text of a sample catalogue. */
    public static String text(String sample) {
        try {
            return Files.readString(Path.of("catalogue-samples", sample));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    public static Catalogue catalogue(String csv) {
        var looks = rulebook().choices().looks().stream().map(Look::id).collect(Collectors.toSet());
        var reading = new CatalogueReader(looks, rulebook().choices().currency()).read(csv);
        if (reading instanceof CatalogueReading.Read read) {
            return read.catalogue();
        }
        throw new AssertionError("faults in the catalogue: " + reading);
    }

    public static Brief brief(String json) {
        var reading = new BriefReader(rulebook().choices()).read(json);
        if (reading instanceof BriefReading.Read read) {
            return read.brief();
        }
        throw new AssertionError("faults in the brief: " + reading);
    }

    /** The proposal for a brief that must have one. */
    public static Proposal made(Designer designer, String brief) {
        return made(designer, brief, Adjustments.NONE);
    }

    public static Proposal made(Designer designer, String brief, Adjustments adjustments) {
        var outcome = designer.propose(brief, adjustments, Designer.SEED);
        if (outcome instanceof Outcome.Made made) {
            return made.proposal();
        }
        throw new AssertionError("no proposal for " + brief + ": " + outcome);
    }
}
