package boughwright.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.measure.Length;
import org.junit.jupiter.api.Test;

class TreeFormTest {

    private final Tree nine = BriefFixture.read("{\"tree\": {\"height\": \"9 ft\"}}").tree();

    /** Lowest branches at about 8 % of the height: common practice, no published source. */
    @Test
    void a_tree_is_a_cone_from_its_lowest_branches_at_eight_percent_to_its_tip() {
        TreeForm form = nine.form();
        assertThat(form.lowestBranch().metres()).isCloseTo(0.08 * nine.height().metres(), within(1e-12));
        assertThat(form.cone().height()).isCloseTo(0.92 * nine.height().metres(), within(1e-12));
        assertThat(form.cone().radius()).isCloseTo(nine.widestDiameter().metres() / 2, within(1e-12));
    }

    @Test
    void its_radius_is_widest_up_to_the_lowest_branches_and_nothing_at_the_tip() {
        TreeForm form = nine.form();
        double widest = form.widestRadius().metres();
        double top = nine.height().metres();
        assertThat(form.radiusAt(0)).isEqualTo(widest);
        assertThat(form.radiusAt(form.lowestBranch().metres())).isCloseTo(widest, within(1e-12));
        assertThat(form.radiusAt((top + form.lowestBranch().metres()) / 2)).isCloseTo(widest / 2, within(1e-12));
        assertThat(form.radiusAt(top)).isZero();
        assertThat(form.radiusAt(top + 1)).isZero();
    }

    /** Lateral area π·R·s of which the sector that is seen is dressed: textbook formula (from memory). */
    @Test
    void only_the_sector_that_is_seen_is_dressed() {
        double whole = nine.form().cone().area();
        assertThat(nine.dressedArea()).isCloseTo(whole / 2, within(1e-12));
        Tree corner = new Tree(nine.height(), nine.widestDiameter(), nine.fullness(), SeenFrom.CORNER, false, false);
        assertThat(corner.dressedArea()).isCloseTo(whole / 4, within(1e-12));
        assertThat(nine.withHeight(Length.ofFeet(12)).dressedArea()).isGreaterThan(nine.dressedArea());
    }
}
