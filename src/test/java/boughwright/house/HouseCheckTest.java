package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.needs.HouseNumber;
import java.util.List;
import org.junit.jupiter.api.Test;

class HouseCheckTest {

    @Test
    void the_shipped_house_rules_have_nothing_to_mend_and_leave_no_doubt() {
        assertThat(HouseFixture.complaints(HouseFixture.shipped())).isEmpty();
    }

    @Test
    void a_gap_names_both_rows_the_trees_that_fall_into_it_and_two_ways_to_mend_it() {
        HouseRules gap = heights("body-ribbon", 4, new Heights("10 ft", false, "11 ft", false));
        assertThat(sentences(gap)).containsExactly("Rolls of body ribbon, By height, row 5, up to: Rows 5 and 6 leave a gap: trees from 11 ft to below 11 ft 6 in"
                + " have no number. Let row 5 end at 11 ft 6 in, or let row 6 begin at 11 ft.");
    }

    @Test
    void a_gap_in_words_names_the_row_that_leaves_them_out_for_stretching_its_neighbours_would_overlap_it() {
        HouseRules gap = HouseFixture.shipped().changeGrid("body-ribbon", "Base", g -> g.change(4, r -> r.withChoice(0, List.of("sparse", "medium"))));
        assertThat(sentences(gap)).containsExactly("Rolls of body ribbon, By height, row 5, Fullness: There is a gap: trees from 10 ft to"
                + " below 11 ft 6 in (Fullness full)"
                + " have no number. Choose full in row 5 too, or add a row.");
    }

    @Test
    void a_gap_of_a_whole_size_is_told_in_the_column_of_sizes() {
        HouseRules gap = HouseFixture.shipped().changeGrid("filler-balls", "Base", g -> g.delete(0));
        assertThat(sentences(gap)).isNotEmpty().allSatisfy(s -> assertThat(s)
                .startsWith("Filler balls, By height, row 7, Diameter: There is a gap: trees from ")
                .endsWith(" (Diameter 60 mm) have no number. Add a row for them, or let a row speak of them too."));
    }

    @Test
    void a_gap_among_sizes_is_closed_by_rows_of_the_same_size() {
        HouseRules gap = HouseFixture.shipped().changeGrid("filler-balls", "Base", g -> g.delete(3));
        assertThat(sentences(gap)).containsExactly("Filler balls, By height, row 3, up to: Rows 3 and 4 leave a gap: trees from 5 ft to"
                + " below 7 ft (Diameter 100 mm)"
                + " have no number. Let row 3 end at 7 ft, or let row 4 begin at 5 ft.");
    }

    @Test
    void a_policy_that_is_there_twice_is_told_by_height() {
        HouseRules twice = HouseFixture.shipped().changeGrid("clusters", "Policy", g -> g.copy(0));
        assertThat(sentences(twice)).containsExactly("Clusters, Rounding, row 2, Tree from: Rows 1 and 2 both answer for trees of every"
                + " height. Let only one of them do so.");
    }

    @Test
    void inches_are_told_as_they_were_typed() {
        assertThat(sentences(heights("body-ribbon", 4, new Heights("10 ft 2 in", false, "11 ft 6 in", false))))
                .containsExactly("Rolls of body ribbon, By height, row 4,"
                + " up to: Rows 4 and 5 leave a gap: trees from 10 ft to below 10 ft 2 in have no number. Let row 4 end at 10 ft 2 in, or"
                + " let row 5 begin at 10 ft.");
    }

    @Test
    void a_new_row_is_told_cell_by_cell() {
        assertThat(sentences(HouseFixture.shipped().changeGrid("clusters", "Policy", g -> g.add(-1)))).containsExactly(
                "Clusters, Rounding, row 1, Rounded: Nothing is chosen. Choose among: up, nearest, down.",
                "Clusters, Rounding, row 1, Never below: The number is missing. Type one.",
                "Clusters, Rounding, row 1, Girth counts: Nothing is chosen. Choose among: yes, no.",
                "Clusters, Rounding, row 1, Sentence for the customer: The sentence for the customer is missing. Write one, or copy that of another row.");
    }

    @Test
    void shares_that_do_not_add_up_are_named() {
        assertThat(sentences(HouseFixture.shipped().withNumber(HouseNumber.MAIN_SHARE, "55"))).containsExactly("Colour shares, Spark, of a hundred parts:"
                + " “Main, of a hundred parts”, “Second, of a hundred parts” and “Spark, of a hundred parts” come to 95 together, not to"
                + " 100. Raise or lower one of them.");
    }

    private static HouseRules heights(String topic, int row, Heights heights) {
        return HouseFixture.shipped().changeGrid(topic, "Base", g -> g.change(row, r -> r.withHeights(heights)));
    }

    private static List<String> sentences(HouseRules rules) {
        return HouseFixture.complaints(rules).stream().map(Complaint::sentence).toList();
    }
}
