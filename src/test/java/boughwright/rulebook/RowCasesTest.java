package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RowCasesTest {

    private static final DmnTables TABLES = RulebookFixture.shipped().tables();

    static Stream<RowCases.Case> cases() {
        return RowCases.all().stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void each_row_answers_for_its_tree_and_another_row_for_the_tree_beside_it(RowCases.Case row) {
        TableAnswer answer = ask(row.table(), row.answers());
        assertThat(answer.row()).as("%s", row).isEqualTo(row.row());
        assertThat(written(answer)).as("%s", row).isEqualTo(row.gives());
        // Tables leave no gap, so an only row answers for every tree, and of several none does.
        assertThat(row.notFor().isEmpty()).as("%s answers for every tree", row).isEqualTo(row.table().rows().size() == 1);
        row.notFor().ifPresent(beside -> assertThat(ask(row.table(), beside).row()).as("%s", row).isNotEqualTo(row.row()));
    }

    @Test
    void no_row_of_the_rulebook_is_without_its_case_and_no_case_without_its_row() {
        List<String> written = TABLES.tables().stream()
                .flatMap(table -> table.rows().stream().map(row -> RowCases.place(table, row.number()))).sorted().toList();
        assertThat(cases().map(RowCases.Case::toString).sorted().toList()).isEqualTo(written).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            row 3 | answers: height 7.5 ft | gives: 1.7                              ; a row reads
            row 3 | answers: hight 7.5 ft | gives: 1.7 | not for: height 8 ft        ; "hight 7.5 ft" begins with none of [height
            row 3 | answers: height 2.3 m | gives: 1.7 | not for: height 8 ft        ; allows a height from 3 to 20, not "2.3 m"
            row 3 | answers: height 7.5 ft | gives: 1.7 | not for: height 21 ft      ; allows a height from 3 to 20, not "21 ft"
            == Bass                                                                  ; has no table "Bass" of body-ribbon
            """)
    void what_a_case_file_does_not_know_is_told_with_its_file_and_line(String text, String fault) {
        List<CaseLine> lines = CaseLine.of("body-ribbon/rows.txt", List.of("# Rolls", "== Base", "", text));
        assertThatThrownBy(() -> RowCases.read(lines)).isInstanceOf(AssertionError.class)
                .hasMessageContaining("body-ribbon/rows.txt:4: ").hasMessageContaining(fault);
    }

    private static TableAnswer ask(WrittenTable table, Map<String, Object> inputs) {
        return TABLES.ask(table.file(), table.name(), inputs);
    }

    private static Map<String, String> written(TableAnswer answer) {
        Map<String, String> written = new TreeMap<>();
        answer.values().forEach((name, value) ->
                written.put(name, value instanceof BigDecimal number ? number.stripTrailingZeros().toPlainString() : value.toString()));
        return written;
    }
}
