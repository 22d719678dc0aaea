package boughwright.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class PackedTest {

    @Test
    void a_text_comes_back_as_it_was_and_takes_less_room_when_it_repeats_itself() throws IOException {
        String text = "{\"row\": \"½ × 7 in, café\"}\n".repeat(2_000);

        assertThat(Packed.open(Packed.of(text))).isEqualTo(text);
        assertThat(Packed.of(text)).hasSizeLessThan(text.length() / 50).isEqualTo(Packed.of(text));
        assertThat(Packed.open(Packed.of(""))).isEmpty();
    }

    /** What was packed by an earlier kiosk must open: gzip (RFC 1952) of "Boughwright", made by another program (Python 3.11's gzip module, no time stamp). */
    @Test
    void what_another_program_packed_opens() throws IOException {
        assertThat(Packed.open("H4sIAAAAAAAC/3PKL03PKC/KTM8oAQD13MN5CwAAAA==")).isEqualTo("Boughwright");
    }

    @Test
    void what_is_damaged_is_told() {
        assertThatThrownBy(() -> Packed.open("not packed!")).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> Packed.open(Packed.of("some text").substring(0, 20))).isInstanceOf(IOException.class);
    }
}
