package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.Brief;
import boughwright.needs.Adjustments;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ChangedByHandTest {

    private final Brief nine = RulebookFixture.brief("9 ft");

    @Test
    void a_changed_quantity_is_kept_marked_and_said() {
        Need sprays = changed("florals/spray/2", 4).need("florals/spray/2").orElseThrow();
        assertThat(sprays.quantity()).isEqualTo(4);
        assertThat(sprays.computed()).isEqualTo(9);
        assertThat(sprays.changed()).isTrue();
        assertThat(sprays.reason().text()).startsWith("Changed by hand from 9. About one stem of each style");
        assertThat(sprays.reason().row()).isEqualTo("row 7");
    }

    @Test
    void every_other_need_stays_as_it_was() {
        Map<String, Need> before = byId(RulebookFixture.needs(nine));
        Map<String, Need> after = byId(changed("florals/spray/2", 4));
        before.remove("florals/spray/2");
        after.remove("florals/spray/2");
        assertThat(after).isEqualTo(before);
    }

    @Test
    void the_stems_of_groupings_and_clusters_follow_their_number() {
        Needs needs = RulebookFixture.shipped().needs(nine, Adjustments.NONE.withQuantity("topper/grouping", 5).withQuantity("florals/cluster", 4));
        for (String stem : List.of("height-stem", "texture-stem", "face-flower/1", "face-flower/2")) {
            Need topper = needs.need("topper/" + stem).orElseThrow();
            assertThat(topper.quantity()).isEqualTo(5);
            assertThat(topper.changed()).isFalse();
            assertThat(topper.reason().text()).startsWith("One for each of the 5 topper groupings. Changed by hand from 3.");
            assertThat(needs.need("florals/" + stem).orElseThrow().quantity()).isEqualTo(4);
        }
    }

    @Test
    void one_stem_may_be_changed_against_its_grouping() {
        Needs needs = RulebookFixture.shipped().needs(nine, Adjustments.NONE.withQuantity("topper/grouping", 5).withQuantity("topper/height-stem", 7));
        Need stem = needs.need("topper/height-stem").orElseThrow();
        assertThat(stem.quantity()).isEqualTo(7);
        assertThat(stem.computed()).isEqualTo(5);
        assertThat(needs.need("topper/texture-stem").orElseThrow().quantity()).isEqualTo(5);
    }

    @Test
    void none_at_all_may_be_asked_for_and_is_then_not_bought() {
        Needs needs = changed("ornaments/filler-ball/120mm", 0);
        assertThat(needs.need("ornaments/filler-ball/120mm").orElseThrow().changed()).isTrue();
        assertThat(needs.bought()).extracting(Need::id).doesNotContain("ornaments/filler-ball/120mm");
    }

    @Test
    void asking_for_what_is_needed_anyway_changes_nothing() {
        assertThat(changed("florals/cluster", 9)).isEqualTo(RulebookFixture.needs(nine));
    }

    private Needs changed(String need, int quantity) {
        return RulebookFixture.shipped().needs(nine, Adjustments.NONE.withQuantity(need, quantity));
    }

    private static Map<String, Need> byId(Needs needs) {
        return needs.needs().stream().collect(Collectors.toMap(Need::id, need -> need, (a, b) -> a, java.util.TreeMap::new));
    }
}
