package boughwright.kit;

import boughwright.brief.Brief;
import boughwright.catalogue.Product;
import boughwright.colour.Lab;
import boughwright.colour.Match;
import boughwright.needs.Demand;
import boughwright.needs.Layer;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How good a kit is as a design, for one brief with its palette fixed.
 *
 * <p>Every term is a sum over the chosen candidates, a count of different values among them, or a distance from target shares;
 * so with the palette fixed the score is linear in the choices, and an integer programme can maximise it. The mathematics is in
 * docs/design-score.md; this class holds the coefficients, and {@link KitAudit} reads a finished kit without them.
 */
final class DesignScore {

    /** CIEDE2000 at which a colour has nothing more to do with the palette's. */
    static final double FAR = 32;
    /** Different finishes among the ornaments that make a full mix. */
    static final int FINISHES = 3;
    /** Classes of head size among the florals that make a full mix. */
    static final int SCALES = 3;
    /** Different textures in a layer that make it fully varied. */
    static final Map<Layer, Integer> TEXTURES = new EnumMap<>(Map.of(Layer.TOPPER, 3, Layer.RIBBON, 2, Layer.FLORALS, 4, Layer.ORNAMENTS, 3));

    private final Brief brief;
    private final Needs needs;
    private final List<Lab> palette;
    private final List<Slot> slots;
    private final Map<String, Double> area;
    private final double wholeArea;
    private final Map<Role, Demand.PaletteParts> parts;
    private final List<Demand.Prefer> preferences;
    private final Map<Role, Long> slotsIn;
    private final double[] targets;
    private final double lightsSay;
    private final double moneyScale;
    private final Map<String, String> kept;
    private final Map<Layer, String> levels;
    private final Map<Product, double[]> differences = new IdentityHashMap<>();

    DesignScore(KitRequest request, List<Slot> slots) {
        this.brief = request.brief();
        this.needs = request.needs();
        this.palette = brief.palette().labs();
        this.slots = slots;
        this.area = slots.stream().collect(Collectors.toMap(Slot::id, s -> s.needs().stream().mapToDouble(VisibleArea::of).sum()));
        this.wholeArea = Math.max(1e-9, slots.stream().mapToDouble(s -> area.get(s.id())).sum());
        this.parts = needs.demands(Demand.PaletteParts.class).stream()
                .collect(Collectors.toMap(Demand.PaletteParts::role, d -> d, (a, b) -> b, () -> new EnumMap<>(Role.class)));
        Set<Role> roles = slots.stream().map(Slot::role).collect(Collectors.toSet());
        this.preferences = needs.demands(Demand.Prefer.class).stream().filter(p -> roles.contains(p.role())).toList();
        this.slotsIn = slots.stream().collect(Collectors.groupingBy(Slot::role, () -> new EnumMap<>(Role.class), Collectors.counting()));
        this.targets = needs.demands(Demand.Shares.class).stream().findFirst()
                .map(s -> new double[] {s.main(), s.second(), s.spark()}).orElse(new double[] {0.6, 0.3, 0.1});
        this.kept = request.hand().kept();
        this.levels = request.hand().levels();
        this.lightsSay = slots.stream().filter(s -> s.role() == Role.LIGHT_STRING).mapToDouble(this::say).sum();
        this.moneyScale = Math.max(1, moneyScale(request, slots));
    }

    /** What a kit of middling price would cost, in coins: the yardstick of the money terms. */
    private static double moneyScale(KitRequest request, List<Slot> slots) {
        double sum = 0;
        for (Slot slot : slots) {
            sum += request.catalogue().inRole(slot.role()).stream()
                    .mapToLong(p -> Candidate.of(slot, p, 0).coins()).average().orElse(0);
        }
        return sum;
    }

    List<Slot> slots() {
        return slots;
    }

    double[] targets() {
        return targets.clone();
    }

    /** A slot's say in the fit terms: half of it equal for all, half by visible area; all slots together have 1. */
    double say(Slot slot) {
        return 0.5 / slots.size() + 0.5 * area.get(slot.id()) / wholeArea;
    }

    /** As {@link #say}, among the slots that show a colour: lights have no say in the palette. */
    double colourSay(Slot slot) {
        if (slot.role() == Role.LIGHT_STRING) {
            return 0;
        }
        return say(slot) / (1 - lightsSay);
    }

    /** What a slot shows, m². */
    double area(Slot slot) {
        return area.get(slot.id());
    }

    /** The slot's share of the area that is seen, 0..1; for {@link Term#PALETTE_SHARES}. */
    double areaShare(Slot slot) {
        return area.get(slot.id()) / wholeArea;
    }

    /** 1 for a product made for the look; else up to 0.7 for a texture and a finish that belong to it. */
    double lookFit(Product product) {
        if (product.looks().contains(brief.look().id())) {
            return 1;
        }
        double texture = brief.look().textures().contains(product.texture().word()) ? 0.4 : 0;
        double finish = brief.look().finishes().contains(product.finish().word()) ? 0.3 : 0;
        return texture + finish;
    }

    /** How near the product's colour comes to the colour that suits its role best, 0..1. */
    double paletteFit(Role role, Product product) {
        if (role == Role.LIGHT_STRING) {
            return 0;
        }
        int part = part(role, product);
        return suits(role, part) * closeness(differences(product)[part]);
    }

    /** The palette colour that the product stands for in the role: 0 main, 1 second, 2 spark, 3 ground. */
    int part(Role role, Product product) {
        int best = 0;
        double bestFit = -1;
        for (int i = 0; i < palette.size(); i++) {
            // The colour itself decides first, what suits the role second, so that an off-palette piece still counts somewhere.
            double fit = closeness(differences(product)[i]) * (0.25 + 0.75 * suits(role, i));
            if (fit > bestFit) {
                bestFit = fit;
                best = i;
            }
        }
        return best;
    }

    /** CIEDE2000 between a product and a palette colour. */
    double difference(Product product, int part) {
        return differences(product)[part];
    }

    /** CIEDE2000 to each palette colour, worked out once: large catalogues ask for them often. */
    private double[] differences(Product product) {
        return differences.computeIfAbsent(product, p -> palette.stream().mapToDouble(p.lab()::difference).toArray());
    }

    private double suits(Role role, int part) {
        Demand.PaletteParts wanted = parts.get(role);
        return wanted == null ? 1 : wanted.of(part);
    }

    static double closeness(double difference) {
        return Math.max(0, Math.min(1, (FAR - difference) / (FAR - Match.ALIKE_UP_TO)));
    }

    /** Share of the seen area that ground may take from second without being counted twice: ground counts as second. */
    static int shareGroup(int part) {
        return part == 3 ? 1 : part;
    }

    /** The colour is visibly off the palette's, yet so near that it looks like a mistake. */
    boolean nearMiss(Role role, Product product) {
        return role != Role.LIGHT_STRING && Match.of(differences(product)[part(role, product)]) == Match.NEAR_MISS;
    }

    /** The share of what the house prefers that this product meets in its role, of the whole of its preferences. */
    double preference(Slot slot, Product product) {
        double whole = 0;
        double met = 0;
        for (Demand.Prefer wish : preferences) {
            double share = wish.weight() / slotsIn.get(wish.role());
            whole += wish.weight();
            if (wish.role() == slot.role() && product.values(wish.trait()).contains(wish.value())) {
                met += share;
            }
        }
        return whole == 0 ? 0 : met / whole;
    }

    double weight(Term term) {
        return term.weight(needs);
    }

    /** Points of the terms that simply add up over the chosen candidates. */
    double points(Candidate candidate) {
        double points = 0;
        for (Map.Entry<Term, Double> entry : additive(candidate).entrySet()) {
            points += weight(entry.getKey()) * entry.getValue();
        }
        return points;
    }

    private Map<Term, Double> additive(Candidate c) {
        Map<Term, Double> values = new EnumMap<>(Term.class);
        Slot slot = c.slot();
        values.put(Term.LOOK_FIT, say(slot) * lookFit(c.product()));
        values.put(Term.PALETTE_FIT, colourSay(slot) * paletteFit(slot.role(), c.product()));
        values.put(Term.NO_NEAR_MISS, nearMiss(slot.role(), c.product()) ? 0 : colourSay(slot));
        values.put(Term.HOUSE_PREFERENCE, preference(slot, c.product()));
        values.put(Term.OWNED_USED, ownedUsed(c));
        values.put(Term.NO_LEFTOVERS, leftovers(c));
        values.put(Term.THRIFT, thrift(c));
        values.put(Term.PRICE_LEVEL, offLevel(slot, c.product()));
        values.put(Term.STABILITY, changed(slot, c.product()));
        return values;
    }

    /** 1 when the customer has some of it; a kind of piece counts, not how many there are. */
    double ownedUsed(Candidate c) {
        return c.ownedUsed() > 0 ? 1 : 0;
    }

    /** Each slot brings its equal part of the 1 that a kit without leftovers scores. */
    double leftovers(Candidate c) {
        return 1.0 / slots.size() - c.leftoverCoins() / moneyScale;
    }

    /** Each slot brings its equal part of the 1 that a costless kit would score. */
    double thrift(Candidate c) {
        return 1.0 / slots.size() - 0.5 * c.coins() / moneyScale;
    }

    /** −1 for a product off the level that was chosen for a layer of the slot. */
    double offLevel(Slot slot, Product product) {
        return slot.needs().stream().map(n -> levels.get(n.layer())).anyMatch(l -> l != null && !l.equals(product.level().word())) ? -1 : 0;
    }

    /** −1 for another product than the one that was in the slot before the change. */
    double changed(Slot slot, Product product) {
        String before = kept.get(slot.id());
        return before == null || before.equals(product.sku()) ? 0 : -1;
    }

    /** Layers whose texture variety counts, with the count that earns everything. */
    Map<Layer, Integer> variedLayers() {
        Map<Layer, Integer> layers = new EnumMap<>(Layer.class);
        TEXTURES.forEach((layer, most) -> {
            if (slots.stream().anyMatch(s -> inLayer(s, layer))) {
                layers.put(layer, most);
            }
        });
        return layers;
    }

    static boolean inLayer(Slot slot, Layer layer) {
        return slot.needs().stream().anyMatch(n -> n.layer() == layer);
    }

    /** More than any choice of these candidates can score. */
    double most(Map<String, List<Candidate>> candidates) {
        double most = weight(Term.PALETTE_SHARES) + weight(Term.TEXTURE_VARIETY) + weight(Term.FINISH_MIX) + weight(Term.SCALE_MIX);
        for (List<Candidate> list : candidates.values()) {
            most += list.stream().mapToDouble(this::points).max().orElse(0);
        }
        return most;
    }
}
