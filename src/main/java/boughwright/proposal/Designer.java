package boughwright.proposal;

import boughwright.brief.Brief;
import boughwright.brief.BriefFault;
import boughwright.brief.BriefReader;
import boughwright.brief.BriefReading;
import boughwright.brief.Owned;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.colour.Lab;
import boughwright.kit.Cause;
import boughwright.kit.Kit;
import boughwright.kit.KitLine;
import boughwright.kit.KitOutcome;
import boughwright.kit.KitRequest;
import boughwright.kit.KitSolver;
import boughwright.kit.Patience;
import boughwright.kit.Swap;
import boughwright.kit.Wish;
import boughwright.layout.Dressing;
import boughwright.layout.Layout;
import boughwright.layout.Stems;
import boughwright.measure.Units;
import boughwright.needs.Adjustments;
import boughwright.needs.Climb;
import boughwright.needs.Layer;
import boughwright.needs.LightLoad;
import boughwright.needs.Role;
import boughwright.needs.TopperReach;
import boughwright.plan.Plan;
import boughwright.plan.Planning;
import boughwright.plan.Stepladder;
import boughwright.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Carries a brief through every step: needs, kit, layout, plan.
 *
 * <p>Pure but for the solver's native library: the same brief, adjustments, catalogue, edition and seed give the same proposal.
 * Safe for several threads.
 */
public final class Designer {

    /** The seed when nobody chooses one. */
    public static final long SEED = 1;

    private final Rulebook rulebook;
    private final Catalogue catalogue;
    private final KitSolver solver;
    private final ProposalWatch watch;

    public Designer(Rulebook rulebook, Catalogue catalogue, KitSolver solver) {
        this(rulebook, catalogue, solver, ProposalWatch.NONE);
    }

    /** @param watch is told of each proposal */
    public Designer(Rulebook rulebook, Catalogue catalogue, KitSolver solver, ProposalWatch watch) {
        this.rulebook = rulebook;
        this.catalogue = catalogue;
        this.solver = solver;
        this.watch = watch;
    }

    public Rulebook rulebook() {
        return rulebook;
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    /** From JSON text; faults in it are an outcome, not an exception. */
    public Outcome propose(String briefJson, Adjustments adjustments, long seed) {
        return propose(briefJson, adjustments, seed, Patience.usual());
    }

    /** @throws java.util.concurrent.CancellationException when {@code patience} is cancelled on the way */
    public Outcome propose(String briefJson, Adjustments adjustments, long seed, Patience patience) {
        BriefReading reading = new BriefReader(rulebook.choices()).read(briefJson);
        if (reading instanceof BriefReading.Faulty faulty) {
            return new Outcome.BadBrief(faulty.faults());
        }
        return propose(((BriefReading.Read) reading).brief(), adjustments, seed, patience);
    }

    public Outcome propose(Brief brief, Adjustments adjustments, long seed) {
        return propose(brief, adjustments, seed, Patience.usual());
    }

    /** @throws java.util.concurrent.CancellationException when {@code patience} is cancelled on the way */
    public Outcome propose(Brief brief, Adjustments adjustments, long seed, Patience patience) {
        long begun = System.nanoTime();
        Outcome outcome = worked(brief, adjustments, seed, patience);
        watch.proposed(System.nanoTime() - begun, outcome);
        return outcome;
    }

    private Outcome worked(Brief brief, Adjustments adjustments, long seed, Patience patience) {
        List<BriefFault> faults = unknownOwned(brief);
        if (!faults.isEmpty()) {
            return new Outcome.BadBrief(faults);
        }
        AskedFor asked = new AskedFor(rulebook, catalogue, brief, adjustments);
        KitOutcome outcome = solver.solve(asked, patience);
        if (outcome instanceof KitOutcome.NoKitFits none) {
            return new Outcome.NoKitFits(rulebook.edition(), asked.all().brief(), adjustments, asked.all().needs(), asked.inOrder(), none.conflict(), seed);
        }
        return new Outcome.Made(proposal(asked.all(), adjustments, ((KitOutcome.Found) outcome).kit(), seed));
    }

    /** The proposal when one can be made; no conflict is looked for, and a brief that names products which are gone has none. */
    public Optional<Proposal> ifPossible(Brief brief, Adjustments adjustments, long seed, Patience patience) {
        if (!unknownOwned(brief).isEmpty()) {
            return Optional.empty();
        }
        KitRequest request = new AskedFor(rulebook, catalogue, brief, adjustments).all();
        return solver.best(request, patience).map(kit -> proposal(request, adjustments, kit, seed));
    }

    /** The kit when there is one, without hanging it; none for a brief that names products which are gone. */
    public Optional<Kit> kitIfPossible(Brief brief, Adjustments adjustments, Patience patience) {
        return kitFrom(Double.NEGATIVE_INFINITY, brief, adjustments, patience);
    }

    /** As {@link #kitIfPossible}, of at least so many points. */
    Optional<Kit> kitFrom(double points, Brief brief, Adjustments adjustments, Patience patience) {
        if (!unknownOwned(brief).isEmpty()) {
            return Optional.empty();
        }
        return solver.bestFrom(points, new AskedFor(rulebook, catalogue, brief, adjustments).all(), patience);
    }

    /** The proposal of a kit that was found for the same brief and adjustments. */
    Proposal hung(Brief brief, Adjustments adjustments, Kit kit, long seed) {
        return proposal(new AskedFor(rulebook, catalogue, brief, adjustments).all(), adjustments, kit, seed);
    }

    private Proposal proposal(KitRequest request, Adjustments adjustments, Kit kit, long seed) {
        return proposal(request, adjustments, kit, Dressing.of(request.brief(), request.needs(), kit, request.catalogue(), seed, adjustments.moved()), seed);
    }

    private Proposal proposal(KitRequest request, Adjustments adjustments, Kit kit, Layout layout, long seed) {
        Brief brief = request.brief();
        Climb climb = Stepladder.forWorkAt(brief.tree().height());
        Plan plan = Planning.of(brief, request.needs(), kit, layout, climb, rulebook.cautions(brief, request.needs(), climb,
                lightLoad(kit, request.catalogue()), topperReach(brief, layout, request.catalogue())));
        return new Proposal(rulebook.edition(), brief, adjustments, request.needs(), kit, layout, plan, seed, request.catalogue());
    }

    /**
     * The same outcome in the language that is spoken now, for somebody who reads these units. Of a proposal kit and layout stay as they
     * are; a conflict is looked for anew, since its sentences come out of the search.
     */
    public Outcome told(Outcome outcome, Units units) {
        if (outcome instanceof Outcome.Made made) {
            return new Outcome.Made(told(made.proposal(), units));
        }
        if (outcome instanceof Outcome.NoKitFits none) {
            return propose(none.brief().withUnits(units), none.adjustments(), none.seed());
        }
        return outcome;
    }

    /** The same proposal in the language that is spoken now, for somebody who reads these units. */
    public Proposal told(Proposal proposal, Units units) {
        KitRequest request = new AskedFor(rulebook, catalogue, proposal.brief().withUnits(units), proposal.adjustments()).all();
        return proposal(request, proposal.adjustments(), KitSolver.told(request, proposal.kit()), proposal.layout(), proposal.seed());
    }

    /** The same kit hung as other hands would have it. @param adjustments that differ from the proposal's in what is moved alone */
    public Proposal rearranged(Proposal proposal, Adjustments adjustments) {
        return proposal(request(proposal), adjustments, proposal.kit(), proposal.seed());
    }

    /** What was asked for as the first of the ways, before others are looked for. */
    public Offers asOffered(Proposal asked) {
        return new OfferMaker(this, asked, Patience.usual()).asAsked();
    }

    /** Three ways to meet one brief; see {@link Offers}. */
    public Offers offers(Proposal asked, Patience patience) {
        return new OfferMaker(this, asked, patience).offers();
    }

    /** The scheme as it would grow over three years; see {@link Growth}. */
    public Growth growth(Proposal asked, Patience patience) {
        return new Growing(this, asked, patience).growth();
    }

    /** The customer's wishes in their order of importance. */
    public List<Wish> wishes(Brief brief, Adjustments adjustments) {
        return new AskedFor(rulebook, catalogue, brief, adjustments).inOrder();
    }

    /**
     * What other products in a slot would mean, worked out before any is taken; the best first.
     *
     * @param most of those that can be had
     */
    public List<Swap> swaps(Proposal proposal, String slot, int most, Patience patience) {
        return solver.swaps(request(proposal), proposal.kit(), slot, most, patience);
    }

    /** Other products for a slot whose colour is nearest to one, the nearest first, and what each would mean. */
    public List<Swap> swapsNear(Proposal proposal, String slot, Lab colour, int most, Patience patience) {
        return solver.swapsNear(request(proposal), proposal.kit(), slot, colour, most, patience);
    }

    /** Why a product is not, or no longer, in a slot of the proposal. */
    Cause cause(Proposal proposal, String slot, String sku) {
        return solver.cause(request(proposal), proposal.kit(), slot, sku);
    }

    /** What one product would mean in a slot of the proposal while everything else stays; empty when it can fill no such slot. */
    Optional<Swap> swap(Proposal proposal, String slot, String sku) {
        return solver.swap(request(proposal), proposal.kit(), slot, sku);
    }

    private KitRequest request(Proposal proposal) {
        return new AskedFor(rulebook, catalogue, proposal.brief(), proposal.adjustments()).all();
    }

    private List<BriefFault> unknownOwned(Brief brief) {
        List<BriefFault> faults = new ArrayList<>();
        List<Owned> owned = brief.owned();
        for (int i = 0; i < owned.size(); i++) {
            if (owned.get(i).described().isEmpty() && catalogue.product(owned.get(i).sku()).isEmpty()) {
                faults.add(BriefFault.unknownSku("owned[" + i + "].sku", owned.get(i).sku()));
            }
        }
        return faults;
    }

    private Optional<TopperReach> topperReach(Brief brief, Layout layout, Catalogue catalogue) {
        return layout.pieces().stream().filter(p -> p.layer() == Layer.TOPPER && !p.role().flower())
                .map(p -> new TopperReach(Stems.top(p, catalogue.product(p.sku()).orElseThrow(), brief)))
                .max(Comparator.comparingDouble(TopperReach::top));
    }

    /** Strings of several makes weigh on one circuit together; their mean load and the shortest run count for each. */
    private static Optional<LightLoad> lightLoad(Kit kit, Catalogue catalogue) {
        List<KitLine> lines = kit.lines().stream().filter(l -> l.role() == Role.LIGHT_STRING).toList();
        List<Product.Lights> lights = lines.stream().map(l -> catalogue.product(l.sku()).orElseThrow().lights().orElseThrow()).toList();
        int strings = lines.stream().mapToInt(KitLine::quantity).sum();
        double watts = 0;
        for (int i = 0; i < lines.size(); i++) {
            watts += lines.get(i).quantity() * lights.get(i).watts();
        }
        int run = lights.stream().mapToInt(Product.Lights::runLimit).min().orElse(0);
        return strings == 0 ? Optional.empty() : Optional.of(new LightLoad(strings, watts / strings, run));
    }
}
