package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;

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

    private static HouseRules heights(String topic, int row, Heights heights) {
        return HouseFixture.shipped().changeGrid(topic, "Base", g -> g.change(row, r -> r.withHeights(heights)));
    }

    private static List<String> sentences(HouseRules rules) {
        return HouseFixture.complaints(rules).stream().map(Complaint::sentence).toList();
    }
}
