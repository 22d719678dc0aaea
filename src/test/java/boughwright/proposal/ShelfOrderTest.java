package boughwright.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ShelfOrderTest {

    @Test
    void shelves_come_in_the_order_of_a_walk() {
        assertThat(Stream.of("D3-12", "A1-4", "D3-2", "D12-1", "B2", "D3", "10", "2", "").sorted(ShelfOrder.WALK))
                .containsExactly("", "2", "10", "A1-4", "B2", "D3", "D3-2", "D3-12", "D12-1");
    }

    @Test
    void the_aisle_is_the_letters_before_the_number() {
        assertThat(ShelfOrder.aisle("D3-12")).isEqualTo("D");
        assertThat(ShelfOrder.aisle("")).isEmpty();
    }
}
