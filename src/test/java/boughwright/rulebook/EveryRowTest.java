package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped tables are asked for heights an eighth of a foot apart and for every word. */
class EveryRowTest {

    private static final DmnTables TABLES = RulebookFixture.shipped().tables();

    static Stream<WrittenTable> tables() {
        return TABLES.tables().stream();
    }

    @ParameterizedTest
    @MethodSource("tables")
    void each_row_answers_for_some_input_and_gives_its_sentence(WrittenTable table) {
        Set<Integer> hit = new TreeSet<>();
        for (Map<String, Object> inputs : inputs(table)) {
            TableAnswer answer = TABLES.ask(table.file(), table.name(), inputs);
            assertThat(answer.reason()).as(inputs.toString()).isNotBlank().isEqualTo(table.reason(table.rows().get(answer.row() - 1)));
            hit.add(answer.row());
        }
        assertThat(hit).containsExactlyElementsOf(table.rows().stream().map(WrittenTable.Row::number).toList());
    }

    @ParameterizedTest
    @MethodSource("tables")
    void no_table_gives_less_than_nothing(WrittenTable table) {
        for (Map<String, Object> inputs : inputs(table)) {
            TableAnswer answer = TABLES.ask(table.file(), table.name(), inputs);
            assertThat(answer.values().values()).filteredOn(BigDecimal.class::isInstance)
                    .allSatisfy(value -> assertThat((BigDecimal) value).isNotNegative());
        }
    }

    /** Every sample of the first column with every sample of the next. */
    private static List<Map<String, Object>> inputs(WrittenTable table) {
        List<Map<String, Object>> all = new ArrayList<>(List.of(Map.of()));
        for (WrittenTable.Input input : table.inputs()) {
            List<Map<String, Object>> wider = new ArrayList<>();
            for (Map<String, Object> inputs : all) {
                for (Object sample : samples(input)) {
                    Map<String, Object> more = new HashMap<>(inputs);
                    more.put(input.name(), sample);
                    wider.add(more);
                }
            }
            all = wider;
        }
        return all;
    }

    private static List<Object> samples(WrittenTable.Input input) {
        return switch (input.kind()) {
            case NUMBER -> {
                NumberInterval range = input.range().orElseThrow();
                List<Object> samples = new ArrayList<>();
                for (BigDecimal at = range.from(); at.compareTo(range.to()) <= 0; at = at.add(new BigDecimal("0.125"))) {
                    samples.add(at);
                }
                yield samples;
            }
            case TEXT -> List.copyOf(input.choices());
            case YES_OR_NO -> List.of(true, false);
        };
    }
}
