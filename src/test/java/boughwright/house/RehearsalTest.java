package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.KioskFixture;
import boughwright.house.Rehearsed.Kind;
import boughwright.house.Rehearsed.Subject;
import boughwright.kit.KitSolver;
import boughwright.needs.Adjustments;
import boughwright.needs.HouseNumber;
import boughwright.needs.Layer;
import boughwright.proposal.Designer;
import boughwright.rulebook.Rulebook;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RehearsalTest {

    private static final Designer LIVE = KioskFixture.designer();

    private static Designer draft(UnaryOperator<HouseRules> change) {
        try {
            Map<String, String> texts = EditionTexts.of(change.apply(HouseFixture.shipped()), "draft", "Draft", LIVE.rulebook().edition());
            Rulebook.Opening opening = Rulebook.open(texts::get, LIVE.rulebook().styleRules());
            return new Designer(((Rulebook.Opening.Open) opening).rulebook(), LIVE.catalogue(), new KitSolver());
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static HouseRules moreRibbon(HouseRules rules) {
        return rules.changeGrid("body-ribbon", "Base", g -> g.change(3, r -> r.withResult(0, "3.2")));
    }

    private static Subject subject(String name, String brief) {
        return new Subject(name, brief, Adjustments.NONE, Designer.SEED);
    }

    private static final Subject SIX = subject("six", "{\"tree\": {\"height\": \"6 ft\"}}");
    private static final Subject NINE = subject("nine", "{\"tree\": {\"height\": \"9 ft\"}}");

    @Test
    void only_trees_that_a_changed_row_is_about_change_and_by_its_layer_in_pieces_and_money() {
        RehearsalReport report = new Rehearsal(new Rehearsal.Memory(LIVE), draft(RehearsalTest::moreRibbon), true).of(List.of(SIX, NINE), 2, n -> { });
        assertThat(report.all()).extracting(Rehearsed::change).containsExactly(Kind.SAME, Kind.CHANGED);
        assertThat(report.all().get(1).quantities()).containsExactly(Map.entry(Layer.RIBBON, 2));
        assertThat(report.byLayer().get(Layer.RIBBON).pieces()).isEqualTo(2);
        assertThat(report.byLayer().get(Layer.RIBBON).money()).hasValueSatisfying(m -> assertThat(m.coins()).isPositive());
        assertThat(report.all().get(1).prices().values().stream().mapToLong(m -> m.coins()).sum())
                .isEqualTo(report.all().get(1).difference().orElseThrow().coins());
        assertThat(report.medianDifference()).contains(report.all().get(1).difference().orElseThrow());
        assertThat(report.largest(10)).containsExactly(report.all().get(1));
    }

    @Test
    void a_budget_that_no_longer_suffices_is_a_new_conflict_and_comes_first() {
        String total = new Rehearsal(new Rehearsal.Memory(LIVE), LIVE, true).pair(NINE).before().orElseThrow().kit().total().decimal();
        Subject tight = subject("tight", "{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"" + cheapest(total) + "\"}");
        RehearsalReport report = new Rehearsal(new Rehearsal.Memory(LIVE), draft(r -> r.changeGrid("body-ribbon", "Base", g -> g.change(3, row -> row.withResult(0, "30")))), true)
                .of(List.of(NINE, tight), 2, n -> { });
        assertThat(report.count(Kind.NEW_CONFLICT)).isEqualTo(1);
        assertThat(report.outOfBudget()).isEqualTo(1);
        assertThat(report.largest(1)).extracting(r -> r.subject().name()).containsExactly("tight");
    }

    private static String cheapest(String total) {
        return new java.math.BigDecimal(total).setScale(0, java.math.RoundingMode.CEILING) + ".00";
    }

    @Test
    void a_brief_that_asks_for_a_look_which_is_gone_is_told_apart() {
        Subject woodland = subject("woodland", "{\"tree\": {\"height\": \"6 ft\"}, \"look\": \"woodland\"}");
        Designer without = draft(r -> r.withLooks(r.looks().subList(1, r.looks().size())));
        assertThat(new Rehearsal(new Rehearsal.Memory(LIVE), without, false).of(List.of(woodland), 1, n -> { }).count(Kind.UNREADABLE)).isEqualTo(1);
    }

    @Test
    void a_change_of_weights_alone_is_seen_without_any_quantity_changing() {
        Designer thrifty = draft(r -> r.withNumber(HouseNumber.SCORE_THRIFT, "60").withNumber(HouseNumber.SCORE_PALETTE_FIT, "5"));
        Rehearsed nine = new Rehearsal(new Rehearsal.Memory(LIVE), thrifty, true).of(List.of(NINE), 1, n -> { }).all().get(0);
        assertThat(nine.change()).isEqualTo(Kind.CHANGED);
        assertThat(nine.quantities()).isEmpty();
        assertThat(nine.difference().orElseThrow().coins()).as("more weight on thrift never costs more").isNegative();
    }

    @Test
    void the_report_is_the_same_on_one_thread_and_on_several_and_tells_its_progress() {
        List<Subject> subjects = IntStream.range(0, 30).mapToObj(i -> subject("t" + i, "{\"tree\": {\"height\": \"" + (4 + i * 0.5) + " ft\"}}")).toList();
        Designer draft = draft(RehearsalTest::moreRibbon);
        int[] seen = new int[1];
        RehearsalReport one = new Rehearsal(new Rehearsal.Memory(LIVE), draft, false).of(subjects, 1, n -> seen[0] = n);
        assertThat(seen[0]).isEqualTo(30);
        assertThat(new Rehearsal(new Rehearsal.Memory(LIVE), draft, false).of(subjects, 4, n -> { }).csv()).isEqualTo(one.csv());
    }

    @Test
    void a_rehearsal_that_nobody_waits_for_stops() {
        Rehearsal rehearsal = new Rehearsal(new Rehearsal.Memory(LIVE), draft(RehearsalTest::moreRibbon), true);
        List<Subject> subjects = IntStream.range(0, 500).mapToObj(i -> NINE).toList();
        assertThatThrownBy(() -> rehearsal.of(subjects, 2, n -> rehearsal.cancel())).isInstanceOf(CancellationException.class);
    }

    @Test
    void the_table_for_a_spreadsheet_has_a_line_for_each_consultation_and_no_formula_in_a_name() {
        RehearsalReport report = new Rehearsal(new Rehearsal.Memory(LIVE), draft(RehearsalTest::moreRibbon), false).of(List.of(subject("=HYPERLINK(\"x\")", NINE.brief()), SIX), 1, n -> { });
        List<String> lines = report.csv().lines().toList();
        assertThat(lines).hasSize(3);
        assertThat(lines.get(0)).startsWith("consultation,change,before,after,difference,budget,lights,lights-price");
        assertThat(lines.get(1)).startsWith("\"'=HYPERLINK(\"\"x\"\")\",changed,");
        assertThat(lines).allSatisfy(l -> assertThat(l.replaceAll("\"[^\"]*\"", "").chars().filter(c -> c == ',').count()).isEqualTo(17));
    }
}
