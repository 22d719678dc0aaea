package boughwright.rulebook;

import static boughwright.rulebook.SampleTexts.TOPPER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TablesAnswerTest {

    private static final DmnTables TABLES = ((DmnCompilation.Sound) new DmnCompiler().compile(SampleTexts.TABLES)).tables();

    @ParameterizedTest
    @CsvSource({"3,1,1", "4.99,1,1", "5,2,2", "7.5,2,2", "8,3,3", "9,3,3", "10,4,4", "11.5,5,5", "12,5,5", "18,6,11.25"})
    void a_height_finds_its_row_and_number(double height, int row, BigDecimal groupings) {
        TableAnswer answer = TABLES.ask(TOPPER, "Base", Map.of("height", height));
        assertThat(answer.row()).isEqualTo(row);
        assertThat(answer.number()).isEqualByComparingTo(groupings);
    }

    @Test
    void an_answer_carries_the_row_s_sentence() {
        assertThat(TABLES.ask(TOPPER, "Base", Map.of("height", 9)).reason()).isEqualTo("A tall tree needs three groupings to hold its tip.");
    }

    @Test
    void a_table_of_several_outputs_gives_them_by_name() {
        TableAnswer policy = TABLES.ask(TOPPER, "Policy", Map.of("height", 9, "seen from", "wall"));
        assertThat(policy.text("rounding")).isEqualTo("nearest");
        assertThat(policy.number("least")).isEqualByComparingTo("1");
        assertThat(policy.flag("girth")).isFalse();
        assertThatThrownBy(() -> policy.number("rounding")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_table_that_chooses_by_word_tells_its_row() {
        TableAnswer round = TABLES.ask(TOPPER, "Seen-from factor", Map.of("seen from", "round"));
        assertThat(round.row()).isEqualTo(2);
        assertThat(round.number()).isEqualByComparingTo("1.2");
    }

    @Test
    void an_input_missing_or_not_allowed_is_refused() {
        refused("Base", Map.of("height", 25), "allows a height from 3 to 20, not 25");
        refused("Policy", Map.of("height", 25), "allows a height from 3 to 20, not 25");
        refused("Base", Map.of("height", Double.NaN), "allows a height from 3 to 20, not NaN");
        refused("Base", Map.of("height", "tall"), "allows a height from 3 to 20, not tall");
        refused("Base", Map.of(), "allows a height from 3 to 20, not null");
        refused("Seen-from factor", Map.of("seen from", "attic"), "allows a seen from among [corner, wall, bay, round], not attic");
    }

    @Test
    void a_table_that_is_not_there_is_a_defect() {
        assertThatThrownBy(() -> TABLES.ask(TOPPER, "Bass", Map.of("height", 9))).isInstanceOf(NoSuchElementException.class).hasMessageContaining("Bass");
    }

    private static void refused(String table, Map<String, ?> inputs, String message) {
        assertThatThrownBy(() -> TABLES.ask(TOPPER, table, inputs)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("table " + table + " of " + TOPPER + " " + message);
    }

    @Test
    void threads_that_ask_at_once_each_get_their_own_row() throws Exception {
        double[] heights = {4, 6, 9, 11, 12, 15};
        ExecutorService threads = Executors.newFixedThreadPool(6);
        try {
            var asked = IntStream.range(0, 6).<Callable<Boolean>>mapToObj(i -> () -> IntStream.range(0, 2_000)
                    .allMatch(n -> TABLES.ask(TOPPER, "Base", Map.of("height", heights[i])).row() == i + 1)).toList();
            for (Future<Boolean> done : threads.invokeAll(asked)) {
                assertThat(done.get()).isTrue();
            }
        } finally {
            threads.shutdownNow();
        }
    }
}
