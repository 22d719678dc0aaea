package boughwright.counter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.quote.Tax;
import boughwright.storage.Databases;
import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TermsTest {

    @Test
    void customers_are_remembered_as_long_as_the_house_says_until_the_manager_says_otherwise() {
        assertThat(Terms.USUAL.number(Terms.Number.KEEP_COLLECTED_DAYS)).isEqualTo(400);
        assertThat(Terms.USUAL.number(Terms.Number.KEEP_OTHER_DAYS)).isEqualTo(30);
    }

    @ParameterizedTest
    @EnumSource
    void terms_that_were_set_are_the_terms(Databases databases) {
        CounterFixture shop = new CounterFixture(databases);
        assertThat(shop.terms.now()).isEqualTo(Terms.USUAL);
        Terms next = new Terms(new Tax("Sales tax", new BigDecimal("8.875"), false, Tax.Basis.LINE, Tax.Rounding.HALF_EVEN), Map.of(Terms.Number.HOLD_HOURS, 3));
        shop.terms.change(next, "Ada");
        assertThat(shop.terms.now()).isEqualTo(next);
        shop.terms.change(Terms.USUAL, "Ada");
        assertThat(shop.terms.now()).isEqualTo(Terms.USUAL);
    }

    @Test
    void a_number_out_of_its_bounds_is_refused() {
        assertThat(Terms.Number.HOLD_HOURS.takes(0)).isFalse();
        assertThatThrownBy(() -> new Terms(Tax.NONE, Map.of(Terms.Number.HOLD_HOURS, 0))).isInstanceOf(IllegalArgumentException.class);
    }
}
