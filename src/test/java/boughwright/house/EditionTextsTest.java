package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.needs.HouseNumber;
import boughwright.rulebook.Rulebook;
import boughwright.rulebook.RulebookFixture;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Map;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;

class EditionTextsTest {

    private static final SortedMap<String, String> SHIPPED = RulebookFixture.texts();

    @Test
    void the_shipped_tables_are_written_back_as_they_were_byte_for_byte() {
        Map<String, String> texts = EditionTexts.of(HouseFixture.shipped(), "winter-26", "Winter 26", HouseFixture.rulebook().edition());
        assertThat(texts.keySet()).filteredOn(path -> path.endsWith(".dmn")).hasSize(11)
                .allSatisfy(path -> assertThat(texts.get(path)).isEqualTo(SHIPPED.get(path)));
    }

    @Test
    void numbers_words_looks_and_palettes_are_written_back_with_the_same_meaning() throws IOException {
        Map<String, String> texts = EditionTexts.of(HouseFixture.shipped(), "winter-26", "Winter 26", HouseFixture.rulebook().edition());
        ObjectMapper json = new ObjectMapper();
        Rulebook.Opening opening = Rulebook.open(path -> texts.getOrDefault(path, SHIPPED.get(path)));
        assertThat(((Rulebook.Opening.Open) opening).rulebook().edition().choices()).isEqualTo(HouseFixture.rulebook().edition().choices());
        json.readTree(SHIPPED.get("edition.json")).get("numbers").fields().forEachRemaining(number -> assertThat(
                ((Rulebook.Opening.Open) opening).rulebook().edition().house().number(boughwright.brief.Word.read(HouseNumber.class, number.getKey()).orElseThrow()))
                .isEqualTo(number.getValue().asDouble()));
    }

    @Test
    void a_draft_is_kept_with_its_mistakes() {
        HouseRules wrong = HouseFixture.shipped().withNumber(HouseNumber.TAIL, "eight inches")
                .changeGrid("clusters", "Base", g -> g.change(2, r -> r.withHeights(new Heights("9 ft", false, "5 foots", true)).withResult(0, "many")));
        assertThat(EditionTexts.draft(EditionTexts.json(wrong))).isEqualTo(wrong);
    }
}
