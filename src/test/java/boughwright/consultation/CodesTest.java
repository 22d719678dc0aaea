package boughwright.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CodesTest {

    @Test
    void a_code_is_two_words_with_a_digit_between_and_reads_as_itself() {
        for (int i = 0; i < 200; i++) {
            String code = Codes.any();
            assertThat(code).matches("[a-z]+-[2-9]-[a-z]+");
            assertThat(Codes.read(code)).hasValue(code);
        }
    }

    @Test
    void a_code_may_be_typed_with_spaces_and_in_capitals() {
        assertThat(Codes.read("  KELP 4  Moss ")).hasValue("kelp-4-moss");
        assertThat(Codes.read("KELP4MOSS")).hasValue("kelp-4-moss");
    }

    @Test
    void anything_else_is_no_code() {
        assertThat(Codes.read("kelp-moss")).isEmpty();
        assertThat(Codes.read("kelp-1-moss")).isEmpty();
        assertThat(Codes.read("kelp-4-moss'; drop table proposal")).isEmpty();
        assertThat(Codes.read("")).isEmpty();
    }
}
