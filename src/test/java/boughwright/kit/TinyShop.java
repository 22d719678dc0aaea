package boughwright.kit;

import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.brief.Fullness;
import boughwright.brief.Household;
import boughwright.brief.Look;
import boughwright.brief.Owned;
import boughwright.brief.Palette;
import boughwright.brief.Room;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.colour.Srgb;
import boughwright.measure.Length;
import boughwright.measure.Money;
import boughwright.measure.Units;
import boughwright.needs.Adjustments;
import boughwright.needs.Demand;
import boughwright.needs.HouseRule;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Reason;
import boughwright.needs.RibbonMeasures;
import boughwright.needs.Role;
import boughwright.needs.Unit;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A shop of a few products made up in a test, with a customer who wants one look in four plain colours. */
final class TinyShop {

    static final String MAIN = "#b5302a";
    static final String SECOND = "#efe4cf";
    static final String SPARK = "#2f6f7c";
    static final String GROUND = "#24402f";
    static final Currency DOLLARS = Currency.getInstance("USD");
    private static final Reason REASON = new Reason("table", "row 1", "So that a test may ask for it.");

    final List<Product> products = new ArrayList<>();
    final List<Need> needs = new ArrayList<>();
    final List<HouseRule> rules = new ArrayList<>();
    final List<Owned> owned = new ArrayList<>();
    Optional<Money> budget = Optional.empty();
    Adjustments hand = Adjustments.NONE;

    TinyShop sell(Goods... goods) {
        for (Goods each : goods) {
            products.add(each.product());
        }
        return this;
    }

    /** A need in a slot of its own. */
    TinyShop need(String id, Layer layer, Role role, int quantity) {
        return need(id, id, layer, role, quantity, Optional.empty());
    }

    TinyShop need(String id, String slot, Layer layer, Role role, int quantity, Optional<Length> diameter) {
        Unit unit = role == Role.LIGHT_STRING ? Unit.BULB : role.ribbon() ? Unit.ROLL : role.stem() ? Unit.STEM : Unit.PIECE;
        needs.add(new Need(id, slot, layer, role, 1, quantity, quantity, unit, diameter, REASON));
        return this;
    }

    TinyShop demand(Demand... demands) {
        for (Demand demand : demands) {
            rules.add(new HouseRule(demand, REASON));
        }
        return this;
    }

    TinyShop has(String sku, int quantity) {
        owned.add(new Owned(sku, quantity));
        return this;
    }

    TinyShop budget(String amount) {
        budget = Money.read(amount, DOLLARS);
        return this;
    }

    Needs needs() {
        return new Needs("test", needs, rules, new RibbonMeasures(0.2, 0.6, 0.3, 0.3, 4, 4), List.of(), Map.of());
    }

    Catalogue catalogue() {
        return new Catalogue(products);
    }

    Brief brief() {
        Length height = Length.ofFeet(7);
        Tree tree = new Tree(height, Tree.usualDiameter(height, Fullness.MEDIUM), Fullness.MEDIUM, SeenFrom.WALL, false, false);
        Look look = new Look("hearth", "Hearth", "Warm.", "plain", List.of("velvet", "leafy"), List.of("matte", "satin"));
        Palette palette = new Palette("plain", "Plain", colour(MAIN), colour(SECOND), colour(SPARK), colour(GROUND));
        return new Brief(tree, new Room(Optional.empty(), false), new Household(false, false), look, palette, Abundance.GENEROUS, budget, owned,
                Units.FEET, "{}");
    }

    KitRequest request() {
        return new KitRequest(brief(), needs(), catalogue(), budget, hand, Map.of());
    }

    /** The value of one term when each slot is filled with the product of this SKU, in the order of the slots. */
    double value(Term term, String... skus) {
        return terms(skus).stream().filter(t -> t.term() == term).findFirst().orElseThrow().value();
    }

    List<TermScore> terms(String... skus) {
        KitRequest request = request();
        List<Slot> slots = Slot.of(request.needs().bought());
        List<Candidate> chosen = new ArrayList<>();
        for (int i = 0; i < skus.length; i++) {
            String sku = skus[i];
            int had = owned.stream().filter(o -> o.sku().equals(sku)).mapToInt(Owned::quantity).sum();
            chosen.add(Candidate.of(slots.get(i), request.catalogue().product(sku).orElseThrow(), had));
        }
        return new KitAudit(request, KitSolver.lines(request.needs(), chosen)).terms();
    }

    static Srgb colour(String hex) {
        return Srgb.read(hex).orElseThrow();
    }
}
