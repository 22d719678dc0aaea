package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.measure.Length;
import boughwright.needs.Layer;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import boughwright.rulebook.Asked;
import boughwright.rulebook.RulebookFixture;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.junit.jupiter.api.Test;

class CurveTest {

    private static final HouseRules SHIPPED = HouseFixture.shipped();
    private static final Map<String, Curve> CURVES = new HashMap<>();
    private static final List<Double> FEET = List.of(3.0, 5.0, 8.0, 10.0, 11.0, 12.0);
    private static final Map<String, ToIntFunction<Needs>> QUANTITIES = new LinkedHashMap<>();

    static {
        QUANTITIES.put("light-bulbs", n -> n.quantity(Layer.LIGHTS, Role.LIGHT_STRING));
        QUANTITIES.put("topper-groupings", n -> n.quantity(Layer.TOPPER, Role.GROUPING));
        QUANTITIES.put("body-ribbon", n -> n.quantity(Layer.RIBBON, Role.BASE_RIBBON));
        QUANTITIES.put("accent-ribbon", n -> n.quantity(Layer.RIBBON, Role.ACCENT_RIBBON));
        QUANTITIES.put("clusters", n -> n.quantity(Layer.FLORALS, Role.CLUSTER));
        QUANTITIES.put("single-flowers", n -> n.quantity(Layer.FLORALS, Role.SINGLE_FLOWER));
        QUANTITIES.put("spray-styles", n -> (int) n.needs().stream().filter(need -> need.role() == Role.SPRAY).count());
        QUANTITIES.put("sprays", n -> n.needs().stream().filter(need -> need.role() == Role.SPRAY).findFirst().orElseThrow().quantity());
        QUANTITIES.put("gap-accents", n -> n.quantity(Layer.ACCENTS, Role.GAP_ACCENT));
    }

    @Test
    void curves_say_what_customers_are_told_for_medium_trees_of_usual_girth_where_rows_begin() {
        for (double feet : FEET) {
            Needs needs = needs(feet, Fullness.MEDIUM, SeenFrom.WALL);
            QUANTITIES.forEach((topic, quantity) -> assertThat(at(curve(sheet(topic), "fullness", "medium"), feet).value())
                    .as(topic + ", " + feet + " ft").isEqualTo(quantity.applyAsInt(needs)));
        }
    }

    @Test
    void curves_say_what_customers_are_told_at_any_height_fullness_and_side() {
        for (double feet = 3; feet <= 20; feet += 0.7) {
            double tenth = Math.round(feet * 10) / 10.0;
            for (Fullness fullness : Fullness.values()) {
                same("fullness", fullness.word(), tenth, needs(tenth, fullness, SeenFrom.WALL));
            }
            for (SeenFrom seenFrom : SeenFrom.values()) {
                same("seen from", seenFrom.word(), tenth, needs(tenth, Fullness.MEDIUM, seenFrom));
            }
        }
    }

    private static void same(String dimension, String word, double feet, Needs needs) {
        QUANTITIES.forEach((topic, quantity) -> assertThat(at(CURVES.computeIfAbsent(topic + dimension + word, key -> curve(sheet(topic), dimension, word)), feet).value())
                .as(topic + ", " + feet + " ft, " + word).isEqualTo(quantity.applyAsInt(needs)));
    }

    @Test
    void a_table_of_diameters_or_sizes_has_a_curve_for_each() {
        assertThat(Curve.of(sheet("feature-ornaments"), "size")).extracting(Curve::name).containsExactly("smaller", "larger");
        assertThat(at(curve(sheet("feature-ornaments"), "size", "larger"), 9).value()).isEqualTo(4);
        assertThat(at(curve(sheet("filler-balls"), "diameter", "100 mm"), 6).value()).as("a share, which is not rounded").isCloseTo(0.015, within(1e-12));
    }

    @Test
    void every_shipped_table_has_a_whole_curve_in_each_dimension() {
        for (Sheet sheet : SHIPPED.sheets()) {
            assertThat(Curve.dimensions(sheet)).contains("fullness", "seen from", "abundance");
            for (String dimension : Curve.dimensions(sheet)) {
                assertThat(Curve.of(sheet, dimension)).as(sheet.topic() + ", " + dimension)
                        .hasSameSizeAs(dimension.equals("size") || dimension.equals("diameter") ? Asked.words(sheet.topic(), Grid.BASE).get(dimension)
                                : sheet.grids().stream().flatMap(g -> g.columns().stream())
                                .filter(c -> c.name().equals(dimension)).findFirst().orElseThrow().choices())
                        .allSatisfy(curve -> assertThat(curve.points()).hasSize(171).allMatch(Curve.Point::known));
            }
        }
    }

    @Test
    void a_growing_row_grows_with_the_surface_from_where_it_begins() {
        Curve bulbs = curve(sheet("light-bulbs"), "fullness", "medium");
        assertThat(at(bulbs, 12).value()).isEqualTo(1300);
        assertThat(at(bulbs, 18).value()).isEqualTo(Math.round(1300 * 1.5 * 1.5));
    }

    @Test
    void a_gap_is_unknown_and_so_is_an_overlap_and_a_number_that_cannot_be_read() {
        Sheet gap = sheet("clusters").change(Grid.BASE, g -> g.delete(3));
        assertThat(unknown(gap)).containsExactly(6.0, 6.1, 6.2, 6.3, 6.4, 6.5, 6.6, 6.7, 6.8, 6.9);
        Sheet overlap = sheet("clusters").change(Grid.BASE, g -> g.change(3, r -> r.withHeights(new Heights("6 ft", false, "7 ft", true))));
        assertThat(unknown(overlap)).containsExactly(7.0);
        Sheet unread = sheet("clusters").change(Grid.BASE, g -> g.change(0, r -> r.withResult(0, "three")));
        assertThat(unknown(unread)).hasSize(10).startsWith(3.0).endsWith(3.9);
        Sheet height = sheet("clusters").change(Grid.BASE, g -> g.change(0, r -> r.withHeights(new Heights("3 foots", false, "4 ft", false))));
        assertThat(unknown(height)).isEqualTo(unknown(unread));
    }

    @Test
    void a_factor_that_no_row_gives_leaves_only_the_curve_of_its_word_unknown() {
        Sheet sheet = sheet("clusters").change("Fullness factor", g -> g.delete(2));
        assertThat(Curve.of(sheet, "fullness")).extracting(c -> c.points().stream().noneMatch(Curve.Point::known)).containsExactly(false, false, true);
    }

    private static List<Double> unknown(Sheet sheet) {
        return curve(sheet, "fullness", "medium").points().stream().filter(p -> !p.known()).map(Curve.Point::feet).toList();
    }

    private static Sheet sheet(String topic) {
        return SHIPPED.sheet(topic).orElseThrow();
    }

    private static Curve curve(Sheet sheet, String dimension, String word) {
        return Curve.of(sheet, dimension).stream().filter(c -> c.name().equals(word)).findFirst().orElseThrow();
    }

    private static Curve.Point at(Curve curve, double feet) {
        return curve.points().stream().filter(p -> Math.abs(p.feet() - feet) < 1e-9).findFirst().orElseThrow();
    }

    private static Needs needs(double feet, Fullness fullness, SeenFrom seenFrom) {
        Length height = Length.ofFeet(feet);
        Brief brief = RulebookFixture.brief("9 ft");
        Tree tree = new Tree(height, Tree.usualDiameter(height, fullness), fullness, seenFrom, false, false);
        return RulebookFixture.needs(brief.withTree(tree).withAbundance(Abundance.GENEROUS));
    }
}
