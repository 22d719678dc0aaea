package boughwright.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.brief.Word;
import boughwright.needs.AccentKind;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.needs.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;

class TextTest {

    private static final ResourceBundle MESSAGES = ResourceBundle.getBundle("boughwright.text.messages", java.util.Locale.ENGLISH);

    @Test
    void a_message_takes_its_values_as_they_are() {
        assertThat(Text.of("brief.fault.missing", "tree.height", "Write {0} in 'braces'.")).isEqualTo("tree.height is missing. Write {0} in 'braces'.");
    }

    @Test
    void braces_that_belong_to_the_sentence_stay() {
        assertThat(Text.of("brief.json.object")).contains("{ \"tree\": { \"height\": \"9 ft\" } }");
    }

    @Test
    void one_thing_is_told_in_the_singular() {
        assertThat(Text.of("unit.roll", 0)).isEqualTo("rolls");
        assertThat(Text.of("unit.roll", 1)).isEqualTo("roll");
        assertThat(Text.of("unit.roll", 2)).isEqualTo("rolls");
    }

    @Test
    void a_key_that_is_missing_is_a_defect_unless_another_word_is_offered() {
        assertThatThrownBy(() -> Text.of("no.such.key")).isInstanceOf(MissingResourceException.class);
        assertThat(Text.or("no.such.key", "as the shop says")).isEqualTo("as the shop says");
        assertThat(Text.or("layer.lights", "other")).isEqualTo("Lights");
    }

    @Test
    void every_layer_role_unit_and_accent_has_its_word() {
        List<String> keys = new ArrayList<>();
        Word.words(Layer.class).forEach(word -> keys.addAll(List.of("layer." + word, "layer." + word + ".words")));
        Word.words(Role.class).forEach(word -> keys.add("role." + word));
        Word.words(Unit.class).forEach(word -> keys.add("unit." + word));
        Word.words(AccentKind.class).forEach(word -> keys.add("accent." + word));
        assertThat(keys).allSatisfy(key -> assertThat(Text.or(key, "")).as(key).isNotBlank());
    }

    @Test
    void every_message_is_a_pattern_that_can_be_filled_and_leaves_no_place_open() {
        for (String key : MESSAGES.keySet()) {
            String filled = Text.of(key, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2);
            assertThat(filled).as(key).isNotBlank().doesNotContainPattern("\\{\\d");
        }
    }

    @Test
    void no_message_holds_a_straight_apostrophe_that_would_swallow_a_place() {
        for (String key : MESSAGES.keySet()) {
            assertThat(MESSAGES.getString(key).replace("'{'", "").replace("'}'", "")).as(key).doesNotContain("'");
        }
    }
}
