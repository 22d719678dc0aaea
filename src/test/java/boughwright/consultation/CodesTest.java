package boughwright.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.codec.language.Soundex;
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

    /**
     * Heard or read wrongly, one word does not become another. Slips are counted as F. J. Damerau, "A technique for computer detection and correction
     * of spelling errors", Communications of the ACM 7(3), 1964: a letter more, fewer, other, or two changed about. What sounds alike is told by
     * Soundex (US patent 1,261,167), as Apache Commons Codec has it.
     */
    @Test
    void any_two_words_differ_by_two_slips_and_by_three_where_they_sound_alike() {
        Soundex sound = new Soundex();
        List<String> near = new ArrayList<>();
        for (String word : Codes.WORDS) {
            for (String other : Codes.WORDS) {
                int least = sound.encode(word).equals(sound.encode(other)) ? 3 : 2;
                if (!word.equals(other) && slips(word, other) < least) {
                    near.add(word + " " + other);
                }
            }
        }
        assertThat(near).isEmpty();
        assertThat(Codes.WORDS).hasSize(100).doesNotHaveDuplicates().allMatch(w -> w.matches("[a-z]{3,8}"));
        assertThat(slips("clove", "clover")).isEqualTo(1);
        assertThat(slips("rowan", "rwoan")).isEqualTo(1);
    }

    private static int slips(String a, String b) {
        int[][] least = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    least[i][j] = i + j;
                    continue;
                }
                int other = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                least[i][j] = Math.min(Math.min(least[i - 1][j], least[i][j - 1]) + 1, least[i - 1][j - 1] + other);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    least[i][j] = Math.min(least[i][j], least[i - 2][j - 2] + 1);
                }
            }
        }
        return least[a.length()][b.length()];
    }
}
