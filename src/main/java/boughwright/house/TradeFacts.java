package boughwright.house;

import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.brief.BriefReader;
import boughwright.brief.BriefReading;
import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.measure.Length;
import boughwright.measure.Units;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import boughwright.rulebook.Rulebook;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the trade holds to be right, tried on a whole edition before it goes live. A shop may have its reasons to do otherwise, so what
 * fails is a doubt to be acknowledged and no fault.
 *
 * <p>The exact numbers are common practice with no published source: a medium tree against a wall, dressed generously. That nothing falls
 * as trees grow, widen, are fuller, are seen from more sides or are dressed more lavishly follows from what the numbers mean.
 */
public final class TradeFacts {

    /** A quantity of a role in a layer: least and most at a height in feet. */
    private record Exact(double feet, Layer layer, Role role, int least, int most) {
    }

    private static final List<Exact> EXACT = List.of(
            new Exact(6.5, Layer.TOPPER, Role.GROUPING, 2, 2), new Exact(7.5, Layer.TOPPER, Role.GROUPING, 2, 2),
            new Exact(9, Layer.TOPPER, Role.GROUPING, 3, 3), new Exact(12, Layer.TOPPER, Role.GROUPING, 5, 5),
            new Exact(6.5, Layer.RIBBON, Role.BASE_RIBBON, 2, 2), new Exact(7.5, Layer.RIBBON, Role.BASE_RIBBON, 2, 2),
            new Exact(9, Layer.RIBBON, Role.BASE_RIBBON, 3, 3), new Exact(12, Layer.RIBBON, Role.BASE_RIBBON, 5, 6),
            new Exact(6.5, Layer.RIBBON, Role.OVERLAY_RIBBON, 2, 2), new Exact(7.5, Layer.RIBBON, Role.OVERLAY_RIBBON, 2, 2),
            new Exact(9, Layer.RIBBON, Role.OVERLAY_RIBBON, 3, 3), new Exact(12, Layer.RIBBON, Role.OVERLAY_RIBBON, 5, 6),
            new Exact(7.5, Layer.FLORALS, Role.CLUSTER, 7, 7), new Exact(9, Layer.FLORALS, Role.CLUSTER, 9, 9),
            new Exact(12, Layer.FLORALS, Role.CLUSTER, 12, 18));
    /** Rolls of each body ribbon on a full tree dressed all round, one more than on a medium one against a wall. */
    private static final List<Exact> FULL_ROUND = List.of(
            new Exact(6.5, Layer.RIBBON, Role.BASE_RIBBON, 3, 3), new Exact(7.5, Layer.RIBBON, Role.BASE_RIBBON, 3, 3),
            new Exact(9, Layer.RIBBON, Role.BASE_RIBBON, 4, 4), new Exact(12, Layer.RIBBON, Role.BASE_RIBBON, 6, 7));
    private static final int SPRAYS_OF_NINE_FEET = 9;
    private static final int DOZENS = 24;

    private final Rulebook rulebook;
    private final Brief any;
    private final List<String> broken = new ArrayList<>();

    private TradeFacts(Rulebook rulebook) {
        this.rulebook = rulebook;
        this.any = ((BriefReading.Read) new BriefReader(rulebook.choices()).read("{\"tree\": {\"height\": \"9 ft\"}}")).brief();
    }

    /** What of the trade's practice the edition breaks, one sentence each; the same for the same edition. */
    public static List<String> broken(Rulebook rulebook) {
        TradeFacts facts = new TradeFacts(rulebook);
        EXACT.forEach(fact -> facts.exact(fact, Fullness.MEDIUM, SeenFrom.WALL, "house.fact.exact"));
        FULL_ROUND.forEach(fact -> facts.exact(fact, Fullness.FULL, SeenFrom.ROUND, "house.fact.full-round"));
        facts.sprays();
        facts.nothingFalls();
        return List.copyOf(facts.broken);
    }

    private void exact(Exact fact, Fullness fullness, SeenFrom seenFrom, String key) {
        int quantity = needs(fact.feet(), fullness, seenFrom, Abundance.GENEROUS).quantity(fact.layer(), fact.role());
        if (quantity < fact.least() || quantity > fact.most()) {
            String usual = fact.least() == fact.most() ? String.valueOf(fact.least()) : Text.of("house.fact.range", fact.least(), fact.most());
            broken.add(Text.of(key, shown(fact.feet()), Text.of("role." + fact.role().word()), String.valueOf(quantity), usual));
        }
    }

    private void sprays() {
        for (Abundance abundance : List.of(Abundance.GENEROUS, Abundance.LAVISH)) {
            for (Need need : needs(9, Fullness.MEDIUM, SeenFrom.WALL, abundance).needs()) {
                boolean usual = abundance == Abundance.GENEROUS ? need.quantity() == SPRAYS_OF_NINE_FEET : need.quantity() >= DOZENS;
                if (need.role() == Role.SPRAY && !usual) {
                    broken.add(Text.of("house.fact.sprays." + abundance.word(), NeedName.of(need), String.valueOf(need.quantity())));
                }
            }
        }
    }

    private void nothingFalls() {
        for (Fullness fullness : Fullness.values()) {
            for (SeenFrom seenFrom : List.of(SeenFrom.WALL, SeenFrom.ROUND)) {
                List<Needs> walk = new ArrayList<>();
                for (double feet = Tree.LEAST_HEIGHT.feet(); feet <= Tree.GREATEST_HEIGHT.feet() + 1e-9; feet += 0.5) {
                    walk.add(needs(feet, fullness, seenFrom, Abundance.GENEROUS));
                }
                rising(walk, i -> Text.of("house.fact.height", shown(Tree.LEAST_HEIGHT.feet() + 0.5 * i), Text.of("fullness." + fullness.word())));
            }
        }
        for (double feet : new double[] {4, 6.5, 7.5, 9, 12, 15}) {
            rising(List.of(Fullness.values()).stream().map(f -> needs(feet, f, SeenFrom.WALL, Abundance.GENEROUS)).toList(),
                    i -> Text.of("house.fact.word", shown(feet), Text.of("fullness." + Fullness.values()[i].word())));
            rising(List.of(SeenFrom.values()).stream().map(s -> needs(feet, Fullness.MEDIUM, s, Abundance.GENEROUS)).toList(),
                    i -> Text.of("house.fact.word", shown(feet), Text.of("seen-from." + SeenFrom.values()[i].word())));
            rising(List.of(Abundance.values()).stream().map(a -> needs(feet, Fullness.MEDIUM, SeenFrom.WALL, a)).toList(),
                    i -> Text.of("house.fact.word", shown(feet), Text.of("abundance." + Abundance.values()[i].word())));
        }
    }

    private void rising(List<Needs> walk, java.util.function.IntFunction<String> where) {
        for (int i = 1; i < walk.size(); i++) {
            Map<String, Need> after = new TreeMap<>();
            walk.get(i).needs().forEach(n -> after.put(n.id(), n));
            for (Need need : walk.get(i - 1).needs()) {
                int now = after.containsKey(need.id()) ? after.get(need.id()).quantity() : 0;
                if (now < need.quantity()) {
                    broken.add(Text.of("house.fact.falls", NeedName.of(need), String.valueOf(need.quantity()), String.valueOf(now), where.apply(i)));
                }
            }
        }
    }

    private Needs needs(double feet, Fullness fullness, SeenFrom seenFrom, Abundance abundance) {
        Length height = Length.ofFeet(feet);
        Tree tree = new Tree(height, Tree.usualDiameter(height, fullness), fullness, seenFrom, false, false);
        return rulebook.needs(any.withTree(tree).withAbundance(abundance), Adjustments.NONE);
    }

    private static String shown(double feet) {
        return Length.ofFeet(feet).show(Units.FEET);
    }
}
