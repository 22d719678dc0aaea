package boughwright.proposal;

import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.brief.BriefFault;
import boughwright.brief.BriefReader;
import boughwright.brief.BriefReading;
import boughwright.brief.Owned;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.kit.Kit;
import boughwright.kit.KitLine;
import boughwright.kit.KitOutcome;
import boughwright.kit.KitRequest;
import boughwright.kit.KitSolver;
import boughwright.kit.Wish;
import boughwright.layout.Dressing;
import boughwright.layout.Layout;
import boughwright.layout.Stems;
import boughwright.needs.Adjustments;
import boughwright.needs.Climb;
import boughwright.needs.Layer;
import boughwright.needs.LightLoad;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import boughwright.needs.TopperReach;
import boughwright.plan.Plan;
import boughwright.plan.Planning;
import boughwright.plan.Stepladder;
import boughwright.rulebook.Rulebook;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

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

    public Designer(Rulebook rulebook, Catalogue catalogue, KitSolver solver) {
        this.rulebook = rulebook;
        this.catalogue = catalogue;
        this.solver = solver;
    }

    public Rulebook rulebook() {
        return rulebook;
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    /** From JSON text; faults in it are an outcome, not an exception. */
    public Outcome propose(String briefJson, Adjustments adjustments, long seed) {
        BriefReading reading = new BriefReader(rulebook.choices()).read(briefJson);
        if (reading instanceof BriefReading.Faulty faulty) {
            return new Outcome.BadBrief(faulty.faults());
        }
        return propose(((BriefReading.Read) reading).brief(), adjustments, seed);
    }

    public Outcome propose(Brief brief, Adjustments adjustments, long seed) {
        List<BriefFault> faults = unknownOwned(brief);
        if (!faults.isEmpty()) {
            return new Outcome.BadBrief(faults);
        }
        Needs needs = rulebook.needs(brief, adjustments);
        KitOutcome outcome = solver.solve(wishes(brief, adjustments, needs), held -> request(brief, adjustments, needs, held));
        if (outcome instanceof KitOutcome.NoKitFits none) {
            return new Outcome.NoKitFits(rulebook.edition(), brief, adjustments, needs, none.conflict(), seed);
        }
        Kit kit = ((KitOutcome.Found) outcome).kit();
        Layout layout = Dressing.of(brief, needs, kit, catalogue, seed);
        Climb climb = Stepladder.forWorkAt(brief.tree().height());
        Plan plan = Planning.of(brief, needs, kit, layout, climb, rulebook.cautions(brief, needs, climb, lightLoad(kit), topperReach(brief, layout)));
        return new Outcome.Made(new Proposal(rulebook.edition(), brief, adjustments, needs, kit, layout, plan, seed));
    }

    private List<BriefFault> unknownOwned(Brief brief) {
        List<BriefFault> faults = new ArrayList<>();
        List<Owned> owned = brief.owned();
        for (int i = 0; i < owned.size(); i++) {
            if (catalogue.product(owned.get(i).sku()).isEmpty()) {
                faults.add(BriefFault.unknownSku("owned[" + i + "].sku", owned.get(i).sku()));
            }
        }
        return faults;
    }

    /** What the customer asked for that could be let go of, most important first: what a hand changed, the money, how much. */
    private List<Wish> wishes(Brief brief, Adjustments adjustments, Needs needs) {
        List<Wish> wishes = new ArrayList<>();
        adjustments.products().forEach((slot, sku) -> needs.bought().stream().filter(n -> n.slot().equals(slot)).findFirst().ifPresent(n ->
                wishes.add(new Wish(Wish.PRODUCT + slot, Text.of("wish.product",
                        catalogue.product(sku).map(Product::name).orElse(sku), Text.of("role." + n.role().word()))))));
        adjustments.quantities().forEach((id, quantity) -> needs.need(id).filter(Need::changed).ifPresent(n ->
                wishes.add(new Wish(Wish.QUANTITY + id, Text.of("wish.quantity", String.valueOf(quantity), Text.of("role." + n.role().word()))))));
        brief.budget().ifPresent(b -> wishes.add(new Wish(Wish.BUDGET, Text.of("wish.budget", b.show()))));
        if (brief.abundance() != Abundance.RESTRAINED) {
            wishes.add(new Wish(Wish.ABUNDANCE, Text.of("wish.abundance", brief.abundance().word())));
        }
        return wishes;
    }

    private KitRequest request(Brief brief, Adjustments adjustments, Needs allHeld, Set<Wish> held) {
        Set<String> ids = held.stream().map(Wish::id).collect(java.util.stream.Collectors.toSet());
        SortedMap<String, Integer> quantities = new TreeMap<>(adjustments.quantities());
        quantities.keySet().removeIf(id -> allHeld.need(id).filter(Need::changed).isPresent() && !ids.contains(Wish.QUANTITY + id));
        SortedMap<String, String> products = new TreeMap<>(adjustments.products());
        products.keySet().removeIf(slot -> !ids.contains(Wish.PRODUCT + slot));
        boolean abundant = brief.abundance() == Abundance.RESTRAINED || ids.contains(Wish.ABUNDANCE);
        Brief asked = abundant ? brief : brief.withAbundance(Abundance.RESTRAINED);
        boolean asWhole = abundant && quantities.equals(adjustments.quantities());
        Needs needs = asWhole ? allHeld : rulebook.needs(asked, new Adjustments(quantities, products));
        return new KitRequest(asked, needs, catalogue, ids.contains(Wish.BUDGET) ? brief.budget() : Optional.empty(), products);
    }

    /** Products that could fill a slot in place of the one that does, the best for the scheme first. */
    public List<Product> alternatives(Proposal proposal, String slot) {
        KitRequest request = new KitRequest(proposal.brief(), proposal.needs(), catalogue, Optional.empty(), Map.of());
        List<String> used = proposal.kit().lines().stream().map(KitLine::sku).toList();
        return solver.ranked(request, slot).stream().filter(p -> !used.contains(p.sku())).toList();
    }

    private Optional<TopperReach> topperReach(Brief brief, Layout layout) {
        return layout.pieces().stream().filter(p -> p.layer() == Layer.TOPPER && !p.role().flower())
                .map(p -> new TopperReach(Stems.top(p, catalogue.product(p.sku()).orElseThrow(), brief)))
                .max(Comparator.comparingDouble(TopperReach::top));
    }

    private Optional<LightLoad> lightLoad(Kit kit) {
        return kit.lines().stream().filter(l -> l.role() == Role.LIGHT_STRING).findFirst().map(line -> {
            Product.Lights lights = catalogue.product(line.sku()).orElseThrow().lights().orElseThrow();
            return new LightLoad(line.quantity(), lights.watts(), lights.runLimit());
        });
    }
}
