package boughwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordsOnPagesTest {

    @Test
    void purposes_of_one_kind_are_named_together() {
        assertThat(CutPages.purposes(List.of("run-4", "run-5", "accent-2"))).isEqualTo("runs 4, 5, accent 2");
        assertThat(CutPages.purposes(List.of("tie"))).isEqualTo("tie");
    }

    @Test
    void a_style_text_holds_nothing_that_could_end_it() {
        assertThat(PageStyle.quoted("a\"}\n;")).isEqualTo("\"a\\000022\\00007d\\00000a\\00003b\"");
    }

    @Test
    void durations_are_read_in_hours_and_minutes() {
        assertThat(List.of(Wording.duration(59), Wording.duration(60), Wording.duration(301))).map(text -> text.replace('\u00a0', ' '))
                .containsExactly("59 min", "1 h", "5 h 1 min");
    }

    @Test
    void characters_that_no_page_can_hold_are_left_out() {
        assertThat(Html.printable("a\u0000b\u001b\ud800c\u00e9\ufffe")).isEqualTo("abc\u00e9");
    }
}
