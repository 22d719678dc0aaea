package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.brief.Brief;
import boughwright.brief.Palette;
import boughwright.needs.Needs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ShippedRulebookTest {

    private final Rulebook rulebook = RulebookFixture.shipped();

    @Test
    void the_edition_lists_every_file_that_lies_in_the_rulebook_so_that_none_is_passed_over() {
        assertThat(rulebook.edition().rules()).containsExactlyInAnyOrderElementsOf(RulebookFixture.files(".drl").keySet());
        assertThat(rulebook.edition().sizing()).containsExactlyInAnyOrderElementsOf(RulebookFixture.files(".dmn").keySet());
    }

    @Test
    void every_rule_that_the_files_declare_was_loaded() {
        long declared = RulebookFixture.files(".drl").entrySet().stream()
                .mapToLong(file -> DrlSource.read(file.getKey(), file.getValue()).rules().size()).sum();
        assertThat(rulebook.rules()).hasSize((int) declared).isEqualTo(RulebookFixture.rules().names().stream().toList());
    }

    @Test
    void every_quantity_has_its_table_file_with_the_same_five_tables() {
        for (Quantity quantity : Quantity.values()) {
            assertThat(rulebook.tables().tables()).filteredOn(table -> table.file().equals(quantity.file())).extracting(WrittenTable::name)
                    .containsExactly("Base", "Fullness factor", "Seen-from factor", "Abundance factor", "Policy");
        }
    }

    @Test
    void every_look_is_shown_in_a_palette_of_its_own_edition() {
        assertThat(rulebook.choices().looks()).isNotEmpty().allSatisfy(look -> assertThat(rulebook.choices().palette(look.palette())).isPresent());
        assertThat(rulebook.choices().palettes()).extracting(Palette::id).doesNotHaveDuplicates();
    }

    @Test
    void needs_come_in_the_order_of_the_layers_with_ids_of_their_own_and_name_the_edition() {
        Needs needs = RulebookFixture.needs(RulebookFixture.brief("9 ft"));
        assertThat(needs.edition()).isEqualTo(rulebook.edition().id());
        assertThat(needs.needs()).extracting(need -> need.layer().ordinal()).isSorted();
        assertThat(needs.needs()).extracting(need -> need.id()).doesNotHaveDuplicates();
        assertThat(needs.accents()).extracting(accent -> accent.leastGap()).isSorted().startsWith(0.0);
    }

    @Test
    void many_may_ask_at_once_and_all_get_the_same() {
        List<Brief> briefs = List.of(RulebookFixture.brief("4 ft"), RulebookFixture.brief("9 ft"), RulebookFixture.brief("15 ft", "seenFrom=round"));
        List<Needs> expected = briefs.stream().map(RulebookFixture::needs).toList();
        assertThat(IntStream.range(0, 120).parallel().allMatch(i -> RulebookFixture.needs(briefs.get(i % 3)).equals(expected.get(i % 3)))).isTrue();
    }

    @Test
    void faults_of_tables_and_of_rules_are_told_together() throws IOException {
        Map<String, String> spoilt = Map.of(
                "edition.json", edition("\"sizing/sprays.dmn\"", "\"safety/fire.drl\""),
                "sizing/sprays.dmn", Files.readString(Path.of("rules/sizing/sprays.dmn")).replace("[8 .. 9)", "[8.5 .. 9)"),
                "safety/fire.drl", Files.readString(Path.of("rules/safety/fire.drl")).replace("Room( nearHeat )", "Room( nearFire )"));
        Rulebook.Opening opening = Rulebook.open(spoilt::get);
        assertThat(opening).isInstanceOf(Rulebook.Opening.Faulty.class);
        List<RulebookFault> faults = ((Rulebook.Opening.Faulty) opening).faults();
        assertThat(faults).extracting(RulebookFault::file).containsExactlyInAnyOrder("sizing/sprays.dmn", "safety/fire.drl");
        assertThat(faults).extracting(RulebookFault::part).anyMatch("Base"::equals).anyMatch(part -> part.startsWith("C-20"));
    }

    @Test
    void a_file_that_the_edition_lists_and_nobody_wrote_is_told_by_its_name() {
        assertThatThrownBy(() -> Rulebook.open(path -> {
            if (path.endsWith("looks.drl")) {
                throw new NoSuchFileException(path);
            }
            return Files.readString(Path.of("rules").resolve(path));
        })).isInstanceOf(IOException.class).hasMessageContaining("style/looks.drl");
    }

    /** The shipped edition with other files. */
    private static String edition(String sizing, String rules) throws IOException {
        return Files.readString(Path.of("rules/edition.json"))
                .replaceFirst("(?s)\"sizing\": \\[.*?]", "\"sizing\": [" + sizing + "]").replaceFirst("(?s)\"rules\": \\[.*?]", "\"rules\": [" + rules + "]");
    }
}
