package boughwright.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TablesAnswerTest {

    private static final String TOPPER = "sizing/topper.dmn";
    private static final DmnTables TABLES =
            assertInstanceOf(DmnCompilation.Sound.class, new DmnCompiler().compile(ShippedTexts.of(".dmn"))).tables();

    /** Heights and groupings: common practice, no published source. */
    @ParameterizedTest
    @CsvSource({"3,1,1", "4.99,1,1", "5,2,2", "6.5,2,2", "7.5,2,2", "8,3,3", "9,3,3", "10,4,4", "11.5,5,5", "12,5,5", "18,6,11.25"})
    void a_height_finds_its_row_and_number(double height, int row, BigDecimal groupings) {
        var answer = TABLES.ask(TOPPER, "Base", Map.of("height", height));
        assertEquals(row, answer.row());
        assertEquals(0, groupings.compareTo(answer.number()), answer.toString());
    }

    @Test
    void an_answer_carries_the_row_s_sentence() {
        assertEquals("A tall tree needs three groupings to hold its tip.", TABLES.ask(TOPPER, "Base", Map.of("height", 9)).reason());
    }

    @Test
    void a_table_of_several_outputs_gives_them_by_name() {
        var policy = TABLES.ask(TOPPER, "Policy", Map.of("height", 9, "fullness", "full"));
        assertEquals("nearest", policy.text("rounding"));
        assertEquals(BigDecimal.ONE, policy.number("least"));
        assertFalse(policy.flag("girth"));
        assertThrows(IllegalArgumentException.class, () -> policy.number("rounding"));
    }

    @Test
    void a_table_that_chooses_by_word_tells_its_row() {
        assertEquals(2, TABLES.ask(TOPPER, "Seen-from factor", Map.of("seen from", "round")).row());
        assertEquals(new BigDecimal("1.35"), TABLES.ask(TOPPER, "Abundance factor", Map.of("abundance", "lavish")).number());
    }

    @Test
    void an_input_missing_or_not_allowed_is_refused() {
        refused("Base", Map.of("height", 25), "table Base of sizing/topper.dmn allows a height from 3 to 20, not 25");
        refused("Policy", Map.of("height", 25), "table Policy of sizing/topper.dmn allows a height from 3 to 20, not 25");
        refused("Base", Map.of("height", Double.NaN), "table Base of sizing/topper.dmn allows a height from 3 to 20, not NaN");
        refused("Base", Map.of("height", "tall"), "table Base of sizing/topper.dmn allows a height from 3 to 20, not tall");
        refused("Base", Map.of(), "table Base of sizing/topper.dmn allows a height from 3 to 20, not null");
        refused("Seen-from factor", Map.of("seen from", "attic"),
                "table Seen-from factor of sizing/topper.dmn allows a seen from among [corner, wall, bay, round], not attic");
    }

    private static void refused(String table, Map<String, ?> inputs, String message) {
        assertEquals(message, assertThrows(IllegalArgumentException.class, () -> TABLES.ask(TOPPER, table, inputs)).getMessage());
    }

    @Test
    void threads_that_ask_at_once_each_get_their_own_row() throws Exception {
        double[] heights = {4, 6, 9, 11, 12, 15};
        var threads = Executors.newFixedThreadPool(6);
        try {
            var asked = IntStream.range(0, 6).<Callable<Void>>mapToObj(i -> () -> {
                for (int n = 0; n < 2_000; n++) {
                    assertEquals(i + 1, TABLES.ask(TOPPER, "Base", Map.of("height", heights[i])).row());
                }
                return null;
            }).toList();
            for (var done : threads.invokeAll(asked)) {
                done.get();
            }
        } finally {
            threads.shutdownNow();
        }
    }
}
