package boughwright.intake;

import static boughwright.intake.IntakeFixture.LOOKS;
import static boughwright.intake.IntakeFixture.USD;
import static boughwright.intake.IntakeFixture.opened;
import static boughwright.intake.IntakeFixture.read;
import static boughwright.intake.IntakeFixture.stored;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MappingTest {

    private static final Mapping MIXED = Mapping.empty().with("sku", "Item “No.”").withConstant("currency", "USD")
            .with("width_mm", new Mapping.Source.Heading("Width", Optional.of(LengthUnit.IN))).withConstant("level", "");

    @TempDir
    Path folder;

    @Test
    void a_mapping_is_kept_as_text_and_comes_back_the_same() {
        assertThat(Mapping.read(MIXED.toJson())).contains(MIXED);
        assertThat(Mapping.read("{}")).contains(Mapping.empty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "null", "7", "{", "{\"sku\": 1}", "{\"sku\": {}}", "{\"sku\": {\"heading\": 1}}",
            "{\"moon\": {\"heading\": \"x\"}}",
        "{\"sku\": {\"heading\": \"x\", \"constant\": \"y\"}}"})
    void any_other_text_is_no_mapping(String text) {
        assertThat(Mapping.read(text)).isEmpty();
    }

    @Test
    void a_column_that_the_catalogue_has_not_is_a_defect() {
        assertThatThrownBy(() -> MIXED.with("moon", "x")).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("moon");
    }

    @Test
    void files_with_the_same_headings_have_the_same_signature_and_others_another() {
        String signature = Mapping.signature(List.of("Item No.", "Qty"));
        assertThat(signature).matches("[0-9a-f]{64}").isEqualTo(Mapping.signature(List.of("qty", "item_no")));
        assertThat(signature).isNotEqualTo(Mapping.signature(List.of("Item No.", "Qty", "Price")))
                .isNotEqualTo(Mapping.signature(List.of("Item No Qty")));
    }

    @Test
    void what_a_kind_of_file_needs_and_the_mapping_leaves_out_is_named() {
        List<String> headings = List.of("code", "qty", "retail");
        assertThat(Mapping.empty().missing(Kind.STOCK, headings)).containsExactly("sku", "stock");
        assertThat(Mapping.empty().with("gtin", "code").with("stock", "qty").missing(Kind.STOCK, headings)).isEmpty();
        assertThat(Mapping.empty().with("sku", "code").with("price", "gone").missing(Kind.PRICE, headings)).containsExactly("price");
        assertThat(Mapping.empty().withConstant("level", "fine").missing(Kind.WHOLE, headings)).contains("roles", "shelf")
                .doesNotContain("level", "looks", "brand");
    }

    @Test
    void a_file_without_what_its_kind_needs_is_not_read() {
        IntakeFile file = opened(stored(folder, "code,qty\nA,1\n"));
        assertThat(Intake.read(file, Kind.STOCK, Mapping.empty().with("sku", "code"), LOOKS, USD, Progress.SILENT))
                .isInstanceOfSatisfying(Delivery.Refused.class, refused -> {
                    assertThat(refused.why()).isEqualTo(Refusal.MAPPING);
                    assertThat(refused.sentence()).contains("stock");
                });
    }

    @Test
    void a_constant_stands_in_every_row_and_its_faults_name_no_heading() {
        IntakeFile file = opened(stored(folder, "code,retail\nA,4.50\nB,5\n"));
        Mapping prices = Mapping.empty().with("sku", "code").with("price", "retail");
        assertThat(read(file, Kind.PRICE, prices.withConstant("currency", "usd")).rows()).extracting(GoodRow::cells)
                .containsExactly(List.of("A", "", "4.50", "USD"), List.of("B", "", "5.00", "USD"));
        assertThat(read(file, Kind.PRICE, prices.withConstant("currency", "EUR")).faults()).hasSize(2).allSatisfy(fault -> {
            assertThat(fault.column()).isEqualTo("currency");
            assertThat(fault.heading()).isEmpty();
            assertThat(fault.value()).isEqualTo("EUR");
        });
    }

    @Test
    void a_currency_that_is_not_given_is_the_shop_s_unless_the_heading_of_the_price_names_another() {
        IntakeFile file = opened(stored(folder, "sku,price (EUR),price\nA,4.50,5\n"));
        assertThat(read(file, Kind.PRICE, Mapping.empty().with("sku", "sku").with("price", "price")).faultless()).isTrue();
        assertThat(read(file, Kind.PRICE, Mapping.empty().with("sku", "sku").with("price", "price (EUR)")).faults()).extracting(IntakeFault::column)
                .containsExactly("currency");
    }

    @Test
    void a_unit_chosen_by_hand_counts_before_the_heading_s_own() {
        IntakeFile file = opened(stored(folder, CsvLines.withWidth("Width (cm)", "2.5")));
        Mapping mapping = Mapping.of(ColumnGuess.of(file, Kind.WHOLE));
        assertThat(read(file, Kind.WHOLE, mapping).products()).singleElement().satisfies(p -> assertThat(p.width().millimetres()).isEqualTo(25));
        Mapping inches = mapping.with("width_mm", new Mapping.Source.Heading("Width (cm)", Optional.of(LengthUnit.IN)));
        assertThat(read(file, Kind.WHOLE, inches).products()).singleElement().satisfies(p -> assertThat(p.width().millimetres()).isEqualTo(63.5));
    }
}
