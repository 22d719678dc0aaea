package boughwright.brief;

import static boughwright.brief.BriefFixture.colour;
import static boughwright.brief.BriefFixture.faults;
import static boughwright.brief.BriefFixture.read;
import static boughwright.brief.BriefFixture.with;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Look, palette, budget and what the customer owns. */
class BriefWishesTest {

    private static final String FOUR = "\"palette\": {\"main\": \"#B5713A\", \"second\": \"#efe4cf\", \"spark\": \"#8f2f4c\", \"ground\": \"#4b5a3c\"}";

    @Test
    void a_look_or_palette_that_the_shop_does_not_have_is_told_with_those_that_it_has() {
        assertThat(faults(with("\"look\": \"moon-garden\""))).singleElement().satisfies(fault -> {
            assertThat(fault.field()).isEqualTo("look");
            assertThat(fault.value()).isEqualTo("moon-garden");
            assertThat(fault.mend()).contains("orchard, frost");
        });
        assertThat(faults(with("\"palette\": \"puce\""))).singleElement().satisfies(fault -> {
            assertThat(fault.field()).isEqualTo("palette");
            assertThat(fault.mend()).contains("apple, ice, plum");
        });
    }

    @Test
    void four_colours_of_one_s_own_are_a_palette() {
        Palette own = read(with(FOUR)).palette();
        assertThat(own.id()).isEqualTo(Palette.OWN);
        assertThat(own.colours()).containsExactly(colour("#b5713a"), colour("#efe4cf"), colour("#8f2f4c"), colour("#4b5a3c"));
    }

    @Test
    void a_colour_left_out_misspelt_or_of_another_kind_is_told_under_its_own_name() {
        String json = with("\"palette\": {\"main\": \"#fff\", \"second\": 3, \"spark\": null, \"extra\": \"#ffffff\"}");
        assertThat(faults(json)).extracting(BriefFault::field)
                .containsExactlyInAnyOrder("palette.main", "palette.second", "palette.spark", "palette.ground", "palette.extra");
        assertThat(faults(json)).filteredOn(fault -> fault.field().equals("palette.main")).singleElement()
                .satisfies(fault -> assertThat(fault.mend()).contains("six hexadecimal digits"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[\"#b5713a\"]", "7", "true"})
    void a_palette_of_another_kind_is_told(String palette) {
        assertThat(faults(with("\"palette\": " + palette))).singleElement().satisfies(fault -> assertThat(fault.field()).isEqualTo("palette"));
    }

    @ParameterizedTest
    @CsvSource({"650.00, 650.00", "650, 650.00", "0.01, 0.01"})
    void a_budget_is_text_of_digits_and_a_point(String text, String amount) {
        assertThat(read(with("\"budget\": \"" + text + "\"")).budget()).hasValueSatisfying(budget -> assertThat(budget.decimal()).isEqualTo(amount));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"$650\"", "\"650 USD\"", "\"-5\"", "\"0\"", "\"0.00\"", "\"12,50\"", "\"650.005\"", "\"\"", "650", "650.0", "[]", "\"1e3\""})
    void any_other_budget_is_told(String budget) {
        assertThat(faults(with("\"budget\": " + budget))).singleElement().satisfies(fault -> {
            assertThat(fault.field()).isEqualTo("budget");
            assertThat(fault.value()).isEqualTo(budget.replace("\"", ""));
            assertThat(fault.mend()).contains("650.00");
        });
    }

    @Test
    void owned_pieces_keep_their_order_and_numbers() {
        assertThat(read(with("\"owned\": [{\"sku\": \"B\", \"quantity\": 2}, {\"sku\": \"A\", \"quantity\": 10000}]")).owned())
                .containsExactly(new Owned("B", 2), new Owned("A", 10_000));
        assertThat(read(with("\"owned\": []")).owned()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{\"sku\": \"A\", \"quantity\": 0} | owned[0].quantity",
        "{\"sku\": \"A\", \"quantity\": -1} | owned[0].quantity",
        "{\"sku\": \"A\", \"quantity\": 10001} | owned[0].quantity",
        "{\"sku\": \"A\", \"quantity\": 99999999999} | owned[0].quantity",
        "{\"sku\": \"A\", \"quantity\": 1.5} | owned[0].quantity",
        "{\"sku\": \"A\", \"quantity\": \"2\"} | owned[0].quantity",
        "{\"sku\": \"A\"} | owned[0].quantity",
        "{\"quantity\": 1} | owned[0].sku",
        "{\"sku\": \" \", \"quantity\": 1} | owned[0].sku",
        "{\"sku\": 7, \"quantity\": 1} | owned[0].sku",
        "{\"sku\": null, \"quantity\": 1} | owned[0].sku",
        "{\"sku\": \"A\", \"quantity\": 1, \"colour\": \"red\"} | owned[0].colour",
        "7 | owned[0]",
        "null | owned[0]"})
    void an_owned_entry_at_fault_is_told_with_its_place_in_the_list(String entry, String field) {
        assertThat(faults(with("\"owned\": [" + entry + "]"))).singleElement().satisfies(fault -> assertThat(fault.field()).isEqualTo(field));
    }

    @Test
    void an_owned_sku_that_stands_twice_is_told_at_its_second_place() {
        assertThat(faults(with("\"owned\": [{\"sku\": \"A\", \"quantity\": 1}, {\"sku\": \"B\", \"quantity\": 1}, {\"sku\": \"A\", \"quantity\": 2}]")))
                .singleElement().satisfies(fault -> {
                    assertThat(fault.field()).isEqualTo("owned[2].sku");
                    assertThat(fault.value()).isEqualTo("A");
                    assertThat(fault.mend()).contains("add the two quantities");
                });
    }

    @Test
    void an_owned_list_that_is_no_list_or_endless_is_told_once() {
        assertThat(faults(with("\"owned\": {\"sku\": \"A\"}"))).extracting(BriefFault::field).containsExactly("owned");
        String many = String.join(",", java.util.Collections.nCopies(201, "{}"));
        assertThat(faults(with("\"owned\": [" + many + "]"))).extracting(BriefFault::field, BriefFault::value)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("owned", "201"));
    }

    @Test
    void a_shop_without_looks_is_a_defect() {
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> new ShopChoices(List.of(), List.of(BriefFixture.APPLE), BriefFixture.SHOP.currency()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
