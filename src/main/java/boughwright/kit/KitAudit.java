package boughwright.kit;

import boughwright.brief.Brief;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.colour.Lab;
import boughwright.measure.Money;
import boughwright.needs.Demand;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import boughwright.needs.Taste;
import boughwright.needs.Trait;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Reads a finished kit line by line as a suspicious customer would, and counts its score anew.
 *
 * <p>It shares the definitions of docs/design-score.md with the programme that chose the kit (weights, visible areas, limits) and
 * none of its code: candidates, coefficients and constraints are unknown here. Every kit is read so before it is shown, and the
 * score and the gap are those found here.
 */
final class KitAudit {

    private static final double TEN_YARDS = 30 * 0.3048;

    private final KitRequest request;
    private final Needs needs;
    private final Catalogue catalogue;
    private final Brief brief;
    private final List<KitLine> lines;
    private final Map<String, Place> places;
    private final double wholeArea;
    private final List<Fault> faults = new ArrayList<>();

    /** What kind of promise a fault breaks. */
    enum Kind { LINES, STOCK, BUDGET, CAP, WISH, HOUSE }

    /** @param words for people who mend programs; of the house's rules the rule's own sentence, of wishes the wish's id */
    record Fault(Kind kind, String words) {
    }

    /** A slot with its role, its needs' layers and the product that fills it. */
    private record Place(String slot, Role role, Set<Layer> layers, List<Need> needs, Product product) {

        double area() {
            return needs.stream().mapToDouble(VisibleArea::of).sum();
        }
    }

    KitAudit(KitRequest request, List<KitLine> lines) {
        this.request = request;
        this.needs = request.needs();
        this.catalogue = request.catalogue();
        this.brief = request.brief();
        this.lines = lines;
        this.places = places();
        this.wholeArea = Math.max(1e-9, places.values().stream().mapToDouble(Place::area).sum());
    }

    private Map<String, Place> places() {
        Map<String, Place> found = new LinkedHashMap<>();
        for (KitLine line : lines) {
            Optional<Product> product = catalogue.product(line.sku());
            Optional<Need> need = needs.need(line.needId());
            if (product.isPresent() && need.isPresent()) {
                Place place = found.computeIfAbsent(line.slot(),
                        s -> new Place(s, line.role(), new LinkedHashSet<>(), new ArrayList<>(), product.get()));
                place.layers().add(line.layer());
                place.needs().add(need.get());
            }
        }
        return found;
    }

    /** Everything that is wrong; empty for a sound kit. */
    List<Fault> faults() {
        faults.clear();
        oneLineForEachNeed();
        oneProductForEachSlot();
        lines.forEach(this::line);
        packsOfEachProduct();
        budget();
        caps();
        wishesAboutProducts();
        needs.rules().forEach(rule -> expect(Kind.HOUSE, holds(rule.demand()), rule.reason().text()));
        return List.copyOf(faults);
    }

    private void expect(Kind kind, boolean sound, String words) {
        if (!sound) {
            faults.add(new Fault(kind, words));
        }
    }

    private void oneLineForEachNeed() {
        List<String> wanted = needs.needs().stream()
                .filter(n -> n.quantity() > 0 && n.role() != Role.GROUPING && n.role() != Role.CLUSTER && n.role() != Role.GAP_ACCENT)
                .map(Need::id).toList();
        List<String> got = lines.stream().map(KitLine::needId).toList();
        expect(Kind.LINES, wanted.equals(got), "lines for " + got + " where the needs are " + wanted);
    }

    private void oneProductForEachSlot() {
        Map<String, String> productOf = new TreeMap<>();
        Map<String, String> slotOf = new TreeMap<>();
        for (KitLine line : lines) {
            String other = productOf.putIfAbsent(line.slot(), line.sku());
            expect(Kind.LINES, other == null || other.equals(line.sku()), "two products in slot " + line.slot());
            String elsewhere = slotOf.putIfAbsent(line.sku(), line.slot());
            expect(Kind.LINES, elsewhere == null || elsewhere.equals(line.slot()), line.sku() + " in two slots");
        }
    }

    private void line(KitLine line) {
        Optional<Need> wanted = needs.need(line.needId());
        Optional<Product> known = catalogue.product(line.sku());
        if (wanted.isEmpty() || known.isEmpty()) {
            faults.add(new Fault(Kind.LINES, line.sku() + " for " + line.needId() + " is not sold or not needed here"));
            return;
        }
        Need need = wanted.get();
        Product product = known.get();
        expect(Kind.LINES, line.slot().equals(need.slot()) && line.layer() == need.layer() && line.role() == need.role(), line.needId() + " in the wrong place");
        expect(Kind.LINES, product.roles().contains(need.role()), line.sku() + " is no " + need.role().word());
        expect(Kind.LINES, line.packSize() == product.pack() && line.unitPrice().equals(product.price()), line.sku() + " is sold in other packs or at another price");
        expect(Kind.LINES, line.price().amount().equals(product.price().amount().multiply(BigDecimal.valueOf(line.packs()))), line.needId() + " costs something else");
        expect(Kind.LINES, line.owned() >= 0 && line.packs() >= 0 && line.owned() <= line.quantity(), line.needId() + " has impossible amounts");
        pieces(line, need, product);
        size(need, product);
    }

    /** Exactly as much as is needed: one piece fewer would not do. */
    private void pieces(KitLine line, Need need, Product product) {
        double each = switch (need.unit()) {
            case BULB -> product.lights().map(Product.Lights::bulbs).orElse(0);
            case ROLL -> product.length().metres() / TEN_YARDS;
            default -> 1;
        };
        // A roll a millimetre short is still a roll.
        double hair = 0.002;
        boolean enough = line.quantity() * each >= need.quantity() - hair;
        boolean tooMany = (line.quantity() - 1) * each >= need.quantity() + hair;
        expect(Kind.LINES, enough && !tooMany, line.quantity() + " of " + line.sku() + " for " + need.quantity() + " of " + need.id());
    }

    /** Balls by their diameter within rounding; features by their drop, which varies by about a quarter. */
    private void size(Need need, Product product) {
        need.diameter().ifPresent(wanted -> {
            boolean ball = need.role() == Role.FILLER_BALL;
            double off = Math.abs((ball ? product.width() : product.length()).metres() - wanted.metres());
            expect(Kind.LINES, off <= (ball ? 0.002 : 0.28 * wanted.metres()) + 1e-12, product.sku() + " is of the wrong size for " + need.id());
        });
    }

    private void packsOfEachProduct() {
        Map<String, List<KitLine>> bySku = lines.stream().collect(Collectors.groupingBy(KitLine::sku, TreeMap::new, Collectors.toList()));
        bySku.forEach((sku, same) -> {
            int quantity = same.stream().mapToInt(KitLine::quantity).sum();
            int owned = same.stream().mapToInt(KitLine::owned).sum();
            int packs = same.stream().mapToInt(KitLine::packs).sum();
            int size = same.get(0).packSize();
            expect(Kind.LINES, owned == Math.min(quantity, had(sku)), owned + " owned pieces used of " + sku + ", " + had(sku) + " are there");
            expect(Kind.LINES, packs * size + owned >= quantity, "too few packs of " + sku);
            expect(Kind.LINES, packs == 0 || (packs - 1) * size + owned < quantity, "a pack too many of " + sku);
            expect(Kind.STOCK, packs <= catalogue.product(sku).map(Product::stock).orElse(0), "more packs of " + sku + " than are in stock");
        });
    }

    private int had(String sku) {
        return brief.owned().stream().filter(o -> o.sku().equals(sku)).mapToInt(o -> o.quantity()).sum();
    }

    private void budget() {
        request.budget().ifPresent(most -> expect(Kind.BUDGET, total().compareTo(most.amount()) <= 0, total() + " is over the budget of " + most.amount()));
    }

    private void caps() {
        request.hand().caps().forEach((layer, most) -> {
            BigDecimal spent = lines.stream().filter(l -> l.layer() == layer).map(l -> l.price().amount()).reduce(BigDecimal.ZERO, BigDecimal::add);
            expect(Kind.CAP, spent.compareTo(most.amount()) <= 0, spent + " is over the " + most.amount() + " for " + layer.word());
        });
    }

    private void wishesAboutProducts() {
        request.own().forEach((slot, sku) -> expect(Kind.LINES, !places.containsKey(slot) || places.get(slot).product().sku().equals(sku),
                slot + " is not " + sku));
        List<Place> bought = places.values().stream().filter(p -> !request.own().containsKey(p.slot())).toList();
        for (Place place : bought) {
            String pinned = request.hand().products().get(place.slot());
            expect(Kind.WISH, pinned == null || pinned.equals(place.product().sku()), Wish.PRODUCT + place.slot());
        }
        for (Taste taste : request.hand().tastes()) {
            expect(Kind.WISH, bought.stream().filter(p -> taste.speaksOf(p.role()))
                    .allMatch(p -> p.product().values(taste.trait()).contains(taste.value()) == taste.wanted()), taste.id());
        }
    }

    private BigDecimal total() {
        return lines.stream().map(KitLine::price).map(Money::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private boolean holds(Demand demand) {
        if (demand instanceof Demand.Only only) {
            return in(Set.of(only.role())).stream().allMatch(p -> meets(p, only.trait(), only.values()));
        }
        if (demand instanceof Demand.Never never) {
            return in(never.roles()).stream().noneMatch(p -> meets(p, never.trait(), never.values()));
        }
        if (demand instanceof Demand.Within within) {
            return in(Set.of(within.role())).stream().mapToDouble(p -> measure(within, p))
                    .allMatch(m -> m >= within.least() - 1e-9 && m <= within.most() + 1e-9);
        }
        if (demand instanceof Demand.Variety variety) {
            List<Product> varied = in(variety.roles());
            Set<String> values = new LinkedHashSet<>();
            varied.forEach(p -> values.addAll(p.values(variety.trait())));
            // So few places cannot show so many values; the house does not ask the impossible.
            return varied.size() < variety.least() || values.size() >= variety.least();
        }
        if (demand instanceof Demand.Differ differ) {
            return in(Set.of(differ.one())).stream().allMatch(a -> in(Set.of(differ.other())).stream()
                    .allMatch(b -> b == a || !meets(b, differ.trait(), a.values(differ.trait()))));
        }
        if (demand instanceof Demand.DarkOne dark) {
            List<Product> among = in(dark.roles());
            return among.isEmpty() || among.stream().anyMatch(p -> p.lab().l() <= dark.lightness());
        }
        if (demand instanceof Demand.Narrower narrower) {
            return in(Set.of(narrower.narrower())).stream().allMatch(n -> in(Set.of(narrower.wider())).stream()
                    .allMatch(w -> n.width().metres() < w.width().metres()));
        }
        // What is left sways the score and forbids nothing.
        return demand instanceof Demand.Prefer || demand instanceof Demand.PaletteParts || demand instanceof Demand.Shares;
    }

    private static boolean meets(Product product, Trait trait, Set<String> values) {
        return product.values(trait).stream().anyMatch(values::contains);
    }

    private static double measure(Demand.Within within, Product product) {
        return switch (within.dimension()) {
            case WIDTH -> product.width().metres();
            case LENGTH -> product.length().metres();
            case LIGHTNESS -> product.lab().l();
        };
    }

    /** The products in some roles; an empty set means all. */
    private List<Product> in(Set<Role> roles) {
        return places.values().stream().filter(p -> roles.isEmpty() || roles.contains(p.role())).map(Place::product).toList();
    }

    /** Term by term in the order of {@link Term}. */
    List<TermScore> terms() {
        return Arrays.stream(Term.values()).map(t -> {
            double value = value(t);
            double weight = t.weight(needs);
            return new TermScore(t, value, weight, value * weight);
        }).toList();
    }

    double score() {
        return terms().stream().mapToDouble(TermScore::points).sum();
    }

    private double value(Term term) {
        return switch (term) {
            case LOOK_FIT -> places.values().stream().mapToDouble(p -> say(p) * lookFit(p.product())).sum();
            case PALETTE_FIT -> coloured().stream().mapToDouble(p -> colourSay(p) * paletteFit(p)).sum();
            case PALETTE_SHARES -> paletteShares();
            case TEXTURE_VARIETY -> textureVariety();
            case FINISH_MIX -> Math.min(3, different(Layer.ORNAMENTS, p -> p.finish().word())) / 3.0;
            case SCALE_MIX -> Math.min(3, different(Layer.FLORALS, Product::scale)) / 3.0;
            case NO_NEAR_MISS -> coloured().stream().filter(p -> !nearMiss(p)).mapToDouble(this::colourSay).sum();
            case HOUSE_PREFERENCE -> housePreference();
            case NO_LEFTOVERS -> places.isEmpty() ? 0 : 1 - leftovers() / moneyScale();
            case THRIFT -> places.isEmpty() ? 0 : 1 - 0.5 * coins(total()) / moneyScale();
            case OWNED_USED -> places.values().stream().filter(p -> had(p.product().sku()) > 0).count();
            case PRICE_LEVEL -> -places.values().stream().filter(this::offLevel).count();
            case STABILITY -> -places.values().stream().filter(this::changed).count();
        };
    }

    private double say(Place place) {
        return 0.5 / places.size() + 0.5 * place.area() / wholeArea;
    }

    /** Places that show a colour of the palette; lights do not. */
    private List<Place> coloured() {
        return places.values().stream().filter(p -> p.role() != Role.LIGHT_STRING).toList();
    }

    private double colourSay(Place place) {
        return say(place) / coloured().stream().mapToDouble(this::say).sum();
    }

    private double lookFit(Product product) {
        if (product.looks().contains(brief.look().id())) {
            return 1;
        }
        return (brief.look().textures().contains(product.texture().word()) ? 0.4 : 0)
                + (brief.look().finishes().contains(product.finish().word()) ? 0.3 : 0);
    }

    private double paletteFit(Place place) {
        int part = part(place);
        return suits(place.role(), part) * near(difference(place, part));
    }

    private boolean nearMiss(Place place) {
        double difference = difference(place, part(place));
        return difference > 3 && difference < 8;
    }

    /** The palette colour that the product stands for: how near it is decides, how well it suits the role a little. */
    private int part(Place place) {
        int best = 0;
        for (int i = 1; i < 4; i++) {
            if (standing(place, i) > standing(place, best)) {
                best = i;
            }
        }
        return best;
    }

    private double standing(Place place, int part) {
        return near(difference(place, part)) * (0.25 + 0.75 * suits(place.role(), part));
    }

    private double difference(Place place, int part) {
        Lab palette = Lab.of(brief.palette().colours().get(part));
        return place.product().lab().difference(palette);
    }

    private static double near(double difference) {
        return difference <= 3 ? 1 : difference >= 32 ? 0 : (32 - difference) / 29;
    }

    private double suits(Role role, int part) {
        return needs.demands(Demand.PaletteParts.class).stream().filter(d -> d.role() == role).reduce((a, b) -> b).map(d -> d.of(part)).orElse(1.0);
    }

    private double paletteShares() {
        double[] targets = needs.demands(Demand.Shares.class).stream().findFirst()
                .map(s -> new double[] {s.main(), s.second(), s.spark()}).orElse(new double[] {0.6, 0.3, 0.1});
        double[] shares = new double[4];
        places.values().forEach(p -> shares[part(p)] += p.area() / wholeArea);
        return 1 - (Math.abs(shares[0] - targets[0]) + Math.abs(shares[1] + shares[3] - targets[1]) + Math.abs(shares[2] - targets[2])) / 2;
    }

    private double textureVariety() {
        Map<Layer, Integer> full = new LinkedHashMap<>(Map.of(Layer.TOPPER, 3, Layer.RIBBON, 2, Layer.FLORALS, 4, Layer.ORNAMENTS, 3));
        full.keySet().removeIf(layer -> places.values().stream().noneMatch(p -> p.layers().contains(layer)));
        int most = full.values().stream().mapToInt(Integer::intValue).sum();
        int got = full.entrySet().stream().mapToInt(e -> Math.min(e.getValue(), different(e.getKey(), p -> p.texture().word()))).sum();
        return most == 0 ? 0 : (double) got / most;
    }

    private int different(Layer layer, Function<Product, String> value) {
        return (int) places.values().stream().filter(p -> p.layers().contains(layer)).map(p -> value.apply(p.product())).distinct().count();
    }

    private double housePreference() {
        double whole = 0;
        double met = 0;
        for (Demand.Prefer wish : needs.demands(Demand.Prefer.class)) {
            List<Product> asked = in(Set.of(wish.role()));
            if (!asked.isEmpty()) {
                whole += wish.weight();
                met += wish.weight() * asked.stream().filter(p -> p.values(wish.trait()).contains(wish.value())).count() / asked.size();
            }
        }
        return whole == 0 ? 0 : met / whole;
    }

    /** What the pieces cost, in coins, that are left over in the packs; each product's to the nearest coin. */
    private double leftovers() {
        double sum = 0;
        for (Place place : places.values()) {
            List<KitLine> same = lines.stream().filter(l -> l.slot().equals(place.slot())).toList();
            int bought = same.stream().mapToInt(l -> l.packs() * l.packSize()).sum();
            int wanted = same.stream().mapToInt(l -> l.quantity() - l.owned()).sum();
            sum += Math.round((double) coins(place.product().price().amount()) * (bought - wanted) / place.product().pack());
        }
        return sum;
    }

    /** What a kit of middling price costs: for each slot the mean over everything in its role, bought whole. */
    private double moneyScale() {
        double sum = 0;
        for (Place place : places.values()) {
            sum += catalogue.products().stream().filter(p -> p.roles().contains(place.role())).mapToDouble(p -> whole(place, p)).average().orElse(0);
        }
        return Math.max(1, sum);
    }

    private static double whole(Place place, Product product) {
        double quantity = place.needs().stream().mapToInt(Need::quantity).sum();
        double pieces = switch (place.needs().get(0).unit()) {
            case BULB -> Math.ceil(quantity / product.lights().orElseThrow().bulbs());
            case ROLL -> Math.ceil(quantity * TEN_YARDS / product.length().metres() - 1e-3);
            default -> quantity;
        };
        return Math.ceil(pieces / product.pack()) * coins(product.price().amount());
    }

    private static double coins(BigDecimal amount) {
        return amount.movePointRight(amount.scale()).doubleValue();
    }

    private boolean offLevel(Place place) {
        return place.layers().stream().map(request.hand().levels()::get).anyMatch(l -> l != null && !l.equals(place.product().level().word()));
    }

    private boolean changed(Place place) {
        String before = request.hand().kept().get(place.slot());
        return before != null && !before.equals(place.product().sku());
    }
}
