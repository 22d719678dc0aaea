package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.rulebook.Asked;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** As large a table as a shop may come to: 512 rows, its gaps and overlaps all found and told at their rows. */
class LargeTableTest {

    private static final int ROWS = 512;
    private static final String TOPIC = "clusters";
    private static final Grid SHIPPED = HouseFixture.shipped().sheet(TOPIC).orElseThrow().grid(Grid.BASE).orElseThrow();
    private static final List<String> FULLNESS = Asked.words(TOPIC, Grid.BASE).get("fullness");
    private static final List<String> SEEN_FROM = Asked.words(TOPIC, Grid.BASE).get("seen from");
    private static final String FROM = Headings.column("from");
    private static final String TO = Headings.column("to");

    @Test
    void five_hundred_and_twelve_rows_without_gap_or_overlap_have_nothing_to_mend() {
        assertThat(complaints(heights(ROWS))).isEmpty();
        assertThat(complaints(bands())).isEmpty();
    }

    @Test
    void each_row_that_was_taken_out_of_a_tall_table_is_told_at_the_rows_beside_it() {
        List<Integer> gone = seeded(12, 3);
        Set<String> told = new TreeSet<>();
        Set<String> expected = new TreeSet<>();
        List<GridRow> rows = new ArrayList<>(heights(ROWS));
        for (int i = gone.size() - 1; i >= 0; i--) {
            rows.remove((int) gone.get(i));
        }
        for (int i = 0; i < gone.size(); i++) {
            // Rows are counted from 1, and so many above have gone.
            int before = gone.get(i) - i;
            expected.add(before + " Rows " + before + " and " + (before + 1) + " leave a gap");
        }
        complaints(rows).forEach(c -> {
            assertThat(c.column()).isEqualTo(TO);
            told.add(c.row() + " " + c.message().replaceFirst(":.*", ""));
        });
        assertThat(told).isEqualTo(expected);
    }

    @Test
    void gaps_and_overlaps_of_shifted_and_copied_rows_are_each_told_by_number() {
        List<Integer> places = seeded(12, 8);
        List<GridRow> rows = new ArrayList<>(heights(ROWS));
        Set<String> expected = new TreeSet<>();
        for (int i = 0; i < places.size(); i++) {
            int row = places.get(i);
            GridRow shipped = rows.get(row);
            Heights heights = shipped.heights();
            String half = LengthText.ofFeet(edge(2 * row + 1, 2 * ROWS));
            if (i % 3 == 0) {
                rows.set(row, shipped.withHeights(new Heights(half, false, heights.to(), heights.upTo())));
                expected.add("gap " + row + " " + (row + 1));
            } else if (i % 3 == 1) {
                rows.set(row, shipped.withHeights(new Heights(LengthText.ofFeet(edge(2 * row - 1, 2 * ROWS)), false, heights.to(), heights.upTo())));
                expected.add("overlap " + row + " " + (row + 1));
            } else {
                rows.add(shipped);
                expected.add("overlap " + (row + 1) + " " + rows.size());
            }
        }
        assertThat(named(complaints(rows))).isEqualTo(expected);
    }

    @Test
    void a_gap_among_bands_fullness_and_sides_is_told_at_the_neighbours_that_could_close_it() {
        List<GridRow> rows = new ArrayList<>(bands());
        List<Integer> gone = seeded(12, 25);
        Collections.reverse(gone);
        List<GridRow> lost = gone.stream().map(rows::get).toList();
        gone.forEach(row -> rows.remove((int) row));
        List<Complaint> complaints = complaints(rows);
        assertThat(complaints).hasSameSizeAs(lost);
        for (GridRow row : lost) {
            List<Integer> alike = IntStream.range(0, rows.size()).filter(i -> rows.get(i).choices().equals(row.choices())).boxed().toList();
            int before = alike.stream().filter(i -> rows.get(i).heights().to().equals(row.heights().from())).findFirst().orElseThrow() + 1;
            int after = alike.stream().filter(i -> rows.get(i).heights().from().equals(row.heights().to())).findFirst().orElseThrow() + 1;
            assertThat(complaints).anySatisfy(c -> {
                assertThat(c.row()).isEqualTo(before);
                assertThat(c.column()).isEqualTo(TO);
                assertThat(c.message()).startsWith("Rows " + before + " and " + after + " leave a gap: ")
                        .contains(row.choices().get(0).get(0), row.choices().get(1).get(0));
            });
        }
    }

    @Test
    void a_row_among_bands_that_is_there_twice_or_speaks_of_its_neighbours_words_is_told_with_the_other() {
        List<GridRow> rows = new ArrayList<>(bands());
        Set<String> expected = new TreeSet<>();
        List<Integer> places = seeded(12, 30);
        for (int i = 0; i < places.size(); i++) {
            int row = places.get(i);
            if (i % 2 == 0) {
                rows.add(rows.get(row));
                expected.add("overlap " + (row + 1) + " " + rows.size());
            } else {
                // Rows of a band follow each other side by side, fullness by fullness.
                int other = (row / SEEN_FROM.size()) * SEEN_FROM.size() + (row + 1) % SEEN_FROM.size();
                rows.set(row, rows.get(row).withChoice(1, List.of(rows.get(row).choices().get(1).get(0), rows.get(other).choices().get(1).get(0))));
                expected.add("overlap " + Math.min(row + 1, other + 1) + " " + Math.max(row + 1, other + 1));
            }
        }
        assertThat(named(complaints(rows))).isEqualTo(expected);
    }

    @Test
    void of_more_gaps_than_anyone_reads_the_first_twenty_five_are_told() {
        List<GridRow> rows = new ArrayList<>(heights(ROWS));
        for (int row = 400; row > 0; row -= 10) {
            rows.remove(row);
        }
        assertThat(complaints(rows)).hasSize(26).allMatch(Complaint::fault).last().satisfies(more -> assertThat(more.message()).contains("15 more"));
    }

    private static Set<String> named(List<Complaint> complaints) {
        Set<String> named = new TreeSet<>();
        for (Complaint complaint : complaints) {
            String message = complaint.message();
            String rows = message.replaceFirst("^Rows (\\d+) and (\\d+) .*", "$1 $2");
            boolean gap = message.contains("leave a gap");
            assertThat(complaint.row()).as(message).isEqualTo(Integer.parseInt(rows.split(" ")[gap ? 0 : 1]));
            assertThat(complaint.column()).isEqualTo(gap ? TO : FROM);
            named.add((gap ? "gap " : "overlap ") + rows);
        }
        return named;
    }

    /** Rows by height alone; in the last, {@link Heights#upTo()}. */
    private static List<GridRow> heights(int count) {
        List<GridRow> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rows.add(row(i, count, List.of(List.of(), List.of(), List.of())));
        }
        return rows;
    }

    /** 43 bands of height, in each a row for each fullness and side: a few rows more than 512. */
    private static List<GridRow> bands() {
        List<GridRow> rows = new ArrayList<>();
        for (int band = 0; band < 43; band++) {
            for (String fullness : FULLNESS) {
                for (String side : SEEN_FROM) {
                    rows.add(row(band, 43, List.of(List.of(fullness), List.of(side), List.of())));
                }
            }
        }
        return rows;
    }

    private static GridRow row(int step, int steps, List<List<String>> words) {
        Heights heights = new Heights(LengthText.ofFeet(edge(step, steps)), false, LengthText.ofFeet(edge(step + 1, steps)), step + 1 == steps);
        return new GridRow(heights, words, List.of(String.valueOf(step + 1)), false, "A tree of {height} takes {quantity}.");
    }

    private static BigDecimal edge(int step, int steps) {
        return BigDecimal.valueOf(3).add(BigDecimal.valueOf(17L * step).divide(BigDecimal.valueOf(steps), MathContext.DECIMAL64));
    }

    /** Rows well apart from each other and from both ends, ascending. */
    private static List<Integer> seeded(int count, long seed) {
        Random random = new Random(seed);
        int apart = ROWS / count;
        return new ArrayList<>(IntStream.range(0, count).map(i -> i * apart + 13 + random.nextInt(apart - 26)).boxed().toList());
    }

    private static List<Complaint> complaints(List<GridRow> rows) {
        Grid large = new Grid(Grid.BASE, true, SHIPPED.columns(), SHIPPED.results(), rows);
        return HouseFixture.complaints(HouseFixture.shipped().changeGrid(TOPIC, Grid.BASE, g -> large));
    }
}
