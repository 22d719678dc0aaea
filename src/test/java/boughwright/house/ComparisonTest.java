package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.Look;
import boughwright.brief.Palette;
import boughwright.colour.Srgb;
import boughwright.measure.Units;
import boughwright.needs.HouseNumber;
import boughwright.needs.HouseWords;
import boughwright.rulebook.Asked;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class ComparisonTest {

    private static final HouseRules SHIPPED = HouseFixture.shipped();

    @Test
    void nothing_differs_between_equal_rules() {
        assertThat(sentences(SHIPPED)).isEmpty();
        assertThat(sentences(EditionTexts.draft(EditionTexts.json(SHIPPED)))).isEmpty();
    }

    @Test
    void a_length_typed_in_another_unit_is_no_change() {
        assertThat(sentences(SHIPPED.withNumber(HouseNumber.LOOP, "24 in"))).isEmpty();
        assertThat(sentences(body(g -> g.change(0, r -> r.withHeights(new Heights("36 in", false, "152.4 cm", false)))))).isEmpty();
    }

    @Test
    void a_changed_cell_is_told_with_what_it_was_and_is() {
        assertThat(sentences(body(g -> g.change(3, r -> r.withResult(0, "3"))))).containsExactly("Rolls of body ribbon, By height, row 4, Rolls: 2.55 → 3");
        assertThat(sentences(body(g -> g.change(3, r -> r.withReason("More.")))).get(0))
                .startsWith("Rolls of body ribbon, By height, row 4, Sentence for the customer: A medium")
                .endsWith(" → More.");
        assertThat(sentences(body(g -> g.change(6, r -> r.withGrowing(false))))).containsExactly(
                "Rolls of body ribbon, By height, row 7, Rolls: 4.25, growing with the surface → 4.25");
        assertThat(sentences(body(g -> g.change(1, r -> r.withChoice(0, List.of("full"))))))
                .containsExactly("Rolls of body ribbon, By height, row 2, Fullness: any → full");
        assertThat(sentences(body(g -> g.change(3, r -> r.withResult(0, ""))))).containsExactly("Rolls of body ribbon, By height, row 4, Rolls: 2.55 → –");
        assertThat(sentences(SHIPPED.changeGrid("body-ribbon", Grid.POLICY, g -> g.change(0, r -> r.withResult(0, "nearest").withResult(2, "false")))))
                .containsExactly(
                "Rolls of body ribbon, Rounding, row 1, Rounded: up → nearest", "Rolls of body ribbon, Rounding, row 1, Girth counts: yes → no");
    }

    @Test
    void an_edge_between_two_rows_that_was_moved_is_a_change_of_both() {
        HouseRules moved = body(g -> g.change(3, r -> r.withHeights(new Heights("8 ft", false, "9 ft 6 in", false)))
                .change(4, r -> r.withHeights(new Heights("9 ft 6 in", false, "11 ft 6 in", false))));
        assertThat(sentences(moved)).containsExactly("Rolls of body ribbon, By height, row 4, up to: 10 ft → 9 ft 6 in",
                "Rolls of body ribbon, By height, row 5, Tree from: 10 ft → 9 ft 6 in");
    }

    @Test
    void whether_an_end_itself_is_meant_is_a_change() {
        assertThat(sentences(body(g -> g.change(5, r -> r.withHeights(new Heights("11 ft 6 in", true, "12 ft", false)))))).containsExactly(
                "Rolls of body ribbon, By height, row 6, Tree from: 11 ft 6 in → above 11 ft 6 in",
                "Rolls of body ribbon, By height, row 6, up to: 12 ft included → 12 ft");
    }

    @Test
    void a_row_that_was_added_is_new_and_leaves_those_below_unchanged() {
        HouseRules added = body(g -> g.change(3, r -> r.withHeights(new Heights("8 ft", false, "9 ft", false)))
                .copy(3).change(4, r -> r.withHeights(new Heights("9 ft", false, "10 ft", false)).withResult(0, "2.9")));
        assertThat(sentences(added)).containsExactlyInAnyOrder("Rolls of body ribbon, By height, row 4, up to: 10 ft → 9 ft",
                "Rolls of body ribbon, By height, row 5: new: 9 ft … 10 ft, 2.9");
    }

    @Test
    void a_row_that_was_taken_out_has_gone_from_where_it_stood() {
        assertThat(sentences(body(g -> g.delete(2)))).containsExactly("Rolls of body ribbon, By height, row 3: gone: 6 ft … 8 ft, 1.7");
    }

    @Test
    void rows_in_another_order_are_no_change() {
        assertThat(sentences(body(g -> g.move(2, 1).move(5, -1)))).isEmpty();
        List<GridRow> backwards = new ArrayList<>(SHIPPED.sheet("body-ribbon").orElseThrow().grid(Grid.BASE).orElseThrow().rows());
        Collections.reverse(backwards);
        assertThat(sentences(body(g -> new Grid(g.name(), g.byHeight(), g.columns(), g.results(), backwards)))).isEmpty();
    }

    @Test
    void a_row_that_was_moved_and_changed_is_told_where_it_stands_now() {
        assertThat(sentences(body(g -> g.change(3, r -> r.withResult(0, "3")).move(3, 1))))
                .containsExactly("Rolls of body ribbon, By height, row 5, Rolls: 2.55 → 3");
    }

    @Test
    void a_changed_number_is_told_in_the_unit_of_the_shop() {
        HouseRules longer = SHIPPED.withNumber(HouseNumber.TAIL, "10 in").withNumber(HouseNumber.SCHEME_TEXTURES, "4");
        assertThat(sentences(longer)).containsExactly("Textures and finishes, Textures in the whole scheme, at least: 3 → 4",
                "Ribbon and bows, Tail of a run: 8 in → 10 in");
        assertThat(Comparison.of(SHIPPED, longer, Units.METRES)).extracting(Change::sentence).contains("Ribbon and bows, Tail of a run: 20.32 cm → 25.4 cm");
    }

    @Test
    void a_changed_list_is_told_whole_and_its_order_is_no_change() {
        assertThat(sentences(SHIPPED.withWords(HouseWords.BASE_WEAVES, List.of("open", "close")))).containsExactly(
                "Ribbon and bows, Weaves of the base ribbon: open → close, open");
        List<String> backwards = new ArrayList<>(SHIPPED.words().get(HouseWords.OVERLAY_PATTERNS));
        Collections.reverse(backwards);
        assertThat(sentences(SHIPPED.withWords(HouseWords.OVERLAY_PATTERNS, backwards))).isEmpty();
    }

    @Test
    void a_changed_look_is_told_by_its_name() {
        assertThat(sentences(looks(l -> l.set(1, new Look("frost-fair", "Frost Fair", "Ice.", "midnight-brass", l.get(1).textures(), List.of("glass"))))))
                .containsExactly(
                "Looks, Frost Fair, Sentence for the customer: Silver birch and pale ice, a market on a frozen river. → Ice.",
                "Looks, Frost Fair, Palette: silver-birch → midnight-brass", "Looks, Frost Fair, Finishes: glitter, glass, shiny → glass");
        assertThat(sentences(looks(l -> l.remove(4)))).containsExactly("Looks: gone: Harbour Light");
        assertThat(sentences(looks(l -> l.add(new Look("snow", "Snow", "Snow.", "silver-birch", List.of("sheer"), List.of("glass"))))))
                .containsExactly("Looks: new: Snow");
    }

    @Test
    void the_order_of_looks_is_a_change_for_the_interview_begins_with_the_first() {
        assertThat(sentences(looks(l -> Collections.swap(l, 0, 1))))
                .containsExactly("Looks, Order: Woodland, Frost Fair, Orchard Supper, Gilded Library, Harbour Light, Bramble Vespers, Night Orrery, Moorland Loom"
                + " → Frost Fair, Woodland, Orchard Supper, Gilded Library, Harbour Light, Bramble Vespers, Night Orrery, Moorland Loom");
    }

    @Test
    void a_changed_palette_is_told_by_its_name() {
        assertThat(sentences(palettes(p -> p.set(0, new Palette("copper-and-cream", "Copper & cream", new Srgb(0, 0, 255), p.get(0).second(), p.get(0).spark(),
                p.get(0).ground()))))).containsExactly("Palettes, Copper & cream, Main: #b5713a → #0000ff");
        assertThat(sentences(palettes(p -> p.remove(1)))).containsExactly("Palettes: gone: Mulberry & moss");
        assertThat(sentences(palettes(p -> Collections.swap(p, 6, 7))).get(0)).startsWith("Palettes, Order: ");
    }

    @Test
    void a_page_that_has_gone_and_one_that_came_are_told_row_by_row() {
        HouseRules without = new HouseRules(SHIPPED.sheets().subList(1, 11), SHIPPED.numbers(), SHIPPED.words(), SHIPPED.looks(), SHIPPED.palettes());
        int rows = SHIPPED.sheets().get(0).grids().stream().mapToInt(g -> g.rows().size()).sum();
        assertThat(sentences(without)).hasSize(rows).allMatch(s -> s.startsWith("Light bulbs, ") && s.contains(": gone: "));
        assertThat(Comparison.of(without, SHIPPED, Units.FEET)).hasSize(rows).allMatch(c -> c.sentence().contains(": new: "));
    }

    @Test
    void a_column_of_somebodys_own_is_called_as_it_is_there() {
        UnaryOperator<Grid> renamed = g -> new Grid(g.name(), g.byHeight(), List.of(new Column("colour", List.of("red", "white"))), g.results(),
                g.rows().stream().map(r -> r.withChoice(0, List.of("red"))).toList());
        assertThat(sentences(SHIPPED.changeGrid("clusters", "Fullness factor", renamed))).contains("Clusters, By fullness, row 1, colour: sparse → red");
    }

    @Test
    void changes_come_in_the_order_of_the_pages() {
        HouseRules changed = SHIPPED.withNumber(HouseNumber.TAIL, "10 in").withWords(HouseWords.BASE_WEAVES, List.of("close"))
                .withLooks(SHIPPED.looks().subList(0, 7)).withPalettes(SHIPPED.palettes().subList(0, 7));
        for (String topic : Asked.topics()) {
            changed = changed.changeGrid(topic, Grid.POLICY, g -> g.change(0, r -> r.withResult(1, "9")));
        }
        List<String> pages = new ArrayList<>(Asked.topics());
        pages.addAll(List.of("ribbon", "ribbon", "looks", "palettes"));
        assertThat(Comparison.of(SHIPPED, changed, Units.FEET)).extracting(Change::page).isEqualTo(pages);
    }

    private static HouseRules body(UnaryOperator<Grid> change) {
        return SHIPPED.changeGrid("body-ribbon", Grid.BASE, change);
    }

    private static HouseRules looks(Consumer<List<Look>> change) {
        List<Look> looks = new ArrayList<>(SHIPPED.looks());
        change.accept(looks);
        return SHIPPED.withLooks(looks);
    }

    private static HouseRules palettes(Consumer<List<Palette>> change) {
        List<Palette> palettes = new ArrayList<>(SHIPPED.palettes());
        change.accept(palettes);
        return SHIPPED.withPalettes(palettes);
    }

    private static List<String> sentences(HouseRules after) {
        return Comparison.of(SHIPPED, after, Units.FEET).stream().map(Change::sentence).toList();
    }
}
