package boughwright.needs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AdjustmentsTest {

    @Test
    void a_change_is_kept_until_it_is_taken_back() {
        Adjustments changed = Adjustments.NONE.withQuantity("florals/cluster", 4).withProduct("ribbon/base-ribbon", "RB-1");
        assertThat(changed.quantity("florals/cluster")).contains(4);
        assertThat(changed.products()).containsEntry("ribbon/base-ribbon", "RB-1");
        assertThat(changed.none()).isFalse();
        assertThat(changed.withQuantity("florals/cluster", 5).quantity("florals/cluster")).contains(5);
        assertThat(changed.withoutQuantity("florals/cluster").withoutProduct("ribbon/base-ribbon")).isEqualTo(Adjustments.NONE).matches(Adjustments::none);
    }

    @Test
    void a_change_leaves_what_it_was_made_from_alone() {
        Adjustments one = Adjustments.NONE.withQuantity("a", 1);
        one.withQuantity("b", 2);
        assertThat(one.quantity("b")).isEmpty();
        assertThat(Adjustments.NONE.none()).isTrue();
        Map<String, String> given = new TreeMap<>();
        Adjustments kept = Adjustments.NONE.keeping(given);
        given.put("c", "RB-1");
        assertThat(kept.none()).isTrue();
        assertThatThrownBy(() -> one.quantities().put("d", 4)).isInstanceOf(UnsupportedOperationException.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, Adjustments.MOST + 1, Integer.MAX_VALUE, Integer.MIN_VALUE})
    void a_quantity_beyond_reason_is_refused(int quantity) {
        assertThatThrownBy(() -> Adjustments.NONE.withQuantity("a", quantity)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("from 0 to 5000");
    }

    @Test
    void none_and_the_most_are_both_allowed() {
        assertThat(Adjustments.NONE.withQuantity("a", 0).withQuantity("b", Adjustments.MOST).quantities()).hasSize(2);
    }
}
