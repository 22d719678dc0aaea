package boughwright.intake;

import static boughwright.intake.IntakeFixture.opened;
import static boughwright.intake.IntakeFixture.read;
import static boughwright.intake.IntakeFixture.season;
import static boughwright.intake.IntakeFixture.stored;
import static boughwright.intake.IntakeFixture.written;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import boughwright.brief.Word;
import boughwright.catalogue.Traits;
import boughwright.needs.Role;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JsonIntakeTest {

    private static final String BALL = """
            {"@context": "https://schema.org", "@type": "Product", "sku": "BL-1", "gtin": "6291041500213", "name": "Silver bauble",
             "brand": {"@type": "Brand", "name": "Larkspur"}, "color": "#bcbec2", "material": "shatterproof",
             "width": {"@type": "QuantitativeValue", "value": 6, "unitCode": "CMT"},
             "offers": {"@type": "Offer", "price": 17.75, "priceCurrency": "USD", "inventoryLevel": {"value": 54, "unitCode": "C62"}},
             "roles": ["filler-ball"], "family": "silver", "texture": "smooth", "finish": "satin", "shape": "ball", "pack": 12, "level": "fine",
             "shelf": "B1-2", "looks": ["frost-fair"], "safety": []}
            """;

    @TempDir
    Path folder;

    private IntakeFile json(String text) {
        return opened(stored(folder, text));
    }

    private static Schema schema() throws IOException {
        String text = Files.readString(Path.of("docs/catalogue.schema.json"));
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12,
                builder -> builder.schemas(Map.of("urn:boughwright:schema:catalogue", text)))
                .getSchema(SchemaLocation.of("urn:boughwright:schema:catalogue"));
    }

    @Test
    void a_product_in_the_words_of_schema_org_is_read_as_it_is_meant() {
        Delivery.Read read = read(json("[" + BALL + "]"), Kind.WHOLE);
        assertThat(read.faults()).isEmpty();
        assertThat(read.products()).singleElement().satisfies(p -> {
            assertThat(p.brand()).isEqualTo("Larkspur");
            assertThat(p.width().millimetres()).isEqualTo(60);
            assertThat(p.stock()).isEqualTo(54);
            assertThat(p.price().show()).isEqualTo("$17.75");
        });
        assertThat(read(json("{\"shop\": {\"products\": 1}, \"products\": [" + BALL + "], \"more\": []}"), Kind.WHOLE).products())
                .isEqualTo(read.products());
    }

    @Test
    void what_stands_within_other_fields_has_a_heading_with_a_point_and_further_objects_of_a_list_do_not_count() {
        IntakeFile file = json("[{\"sku\": 7, \"offers\": [{\"price\": 1.50}, {\"price\": 9}], \"tags\": [\"a\", 2, true, null], \"note\": null, \"size\": {\"unitText\": \"inch\", \"value\": 2.5}}]");
        assertThat(file.headings()).containsExactly("sku", "offers.price", "tags", "note", "size");
        assertThat(file.preview()).containsExactly(List.of("7", "1.50", "a; 2; true; ", "", "2.5 in"));
    }

    @Test
    void a_measure_in_a_unit_that_is_no_length_is_a_fault_rather_than_a_number() {
        String grams = BALL.replace("CMT", "GRM");
        assertThat(read(json("[" + grams + "]"), Kind.WHOLE).faults()).extracting(IntakeFault::heading, IntakeFault::value)
                .containsExactly(tuple("width", "6 GRM"));
    }

    @Test
    void numbers_of_any_size_come_as_plain_text() {
        IntakeFile file = json("[{\"gtin\": 6291041500213, \"stock\": 1e2, \"a\": 1.50, \"b\": 1e999999}]");
        assertThat(file.preview()).containsExactly(List.of("6291041500213", "100", "1.50", "1e999999"));
    }

    @Test
    void a_field_that_only_a_later_entry_has_is_a_heading_and_an_entry_that_is_none_is_a_fault() {
        IntakeFile file = json("[{\"sku\": \"A\"}, 5, {\"sku\": \"B\", \"stock\": 3}]");
        assertThat(file.headings()).containsExactly("sku", "stock");
        assertThat(read(file, Kind.STOCK).faults()).extracting(IntakeFault::place, IntakeFault::column)
                .containsExactly(tuple("Product 1", "stock"), tuple("Product 2", ""));
        assertThat(read(file, Kind.STOCK).rows()).containsExactly(new GoodRow.Stock(3, "B", "", 3));
    }

    /** A validator of JSON Schema 2020-12. */
    @Test
    void what_is_exported_keeps_to_the_published_schema() throws IOException {
        assertThat(schema().validate(new String(written(Format.JSON, season()), StandardCharsets.UTF_8), InputFormat.JSON)).isEmpty();
        assertThat(schema().validate("[" + BALL + "]", InputFormat.JSON)).isEmpty();
        assertThat(schema().validate("[" + BALL.replace("filler-ball", "base-ribbon") + "]", InputFormat.JSON)).isNotEmpty();
        assertThat(schema().validate("[" + BALL.replace("\"pack\": 12", "\"pack\": 0") + "]", InputFormat.JSON)).isNotEmpty();
        assertThat(schema().validate("{\"product\": [" + BALL + "]}", InputFormat.JSON)).isNotEmpty();
    }

    @Test
    void the_schema_has_the_words_that_the_reader_knows() throws IOException {
        JsonNode product = new ObjectMapper().readTree(Path.of("docs/catalogue.schema.json").toFile()).at("/$defs/product/properties");
        Map<String, List<String>> words = Map.of("family", Word.words(Traits.Family.class), "texture", Word.words(Traits.Texture.class), "finish",
                Word.words(Traits.Finish.class), "material", Word.words(Traits.Material.class), "shape", Word.words(Traits.Shape.class), "pattern",
                Word.words(Traits.Pattern.class), "weave", Word.words(Traits.Weave.class), "level", Word.words(Traits.Level.class));
        words.forEach((field, all) -> assertThat(texts(product.at("/" + field + "/enum"))).as(field).isEqualTo(all));
        assertThat(texts(product.at("/safety/items/enum"))).isEqualTo(Word.words(Traits.Safety.class));
        assertThat(texts(product.at("/roles/items/enum"))).containsExactlyInAnyOrderElementsOf(Arrays.stream(Role.values()).filter(Role::bought)
                .map(Word::word).toList());
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(node -> texts.add(node.asText()));
        return texts;
    }
}
