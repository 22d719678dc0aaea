package boughwright.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Seeded: the same two thousand texts in every run. */
class BriefMutationsTest {

    private static final String GOOD = """
            {"tree": {"height": "9 ft", "widestDiameter": "62 in", "fullness": "full", "seenFrom": "round", "lit": true, "real": false},
             "room": {"ceiling": "10 ft", "nearHeat": true}, "household": {"toddlers": false, "pets": true}, "look": "frost",
             "palette": {"main": "#b5713a", "second": "#efe4cf", "spark": "#8f2f4c", "ground": "#4b5a3c"}, "abundance": "lavish",
             "budget": "650.00", "owned": [{"sku": "A-1", "quantity": 4}, {"sku": "A-2", "quantity": 12}]}""";

    private static final String[] PIECES = {"null", "true", "\"\"", "{}", "[]", "-1", "1e999", "0.0000001", "\"9 ft\"", "\"9\"", ",", ":", "{", "}", "[", "]",
        "\"", "\\", "\\u0000", "\u0000", "\uD800", "\uFEFF", "é", "\n", "99999999999999999999", "\"tree\":", "\"height\": \"8 ft\",", "#", "'", "{0}"};

    @Test
    void the_text_that_is_spoilt_is_good_itself() {
        assertThat(BriefFixture.read(GOOD).owned()).hasSize(2);
    }

    @Test
    void two_thousand_spoilt_briefs_never_throw_and_give_a_brief_or_at_least_one_fault() {
        BriefReader reader = new BriefReader(BriefFixture.SHOP);
        Random random = new Random(1225);
        int read = 0;
        for (int i = 0; i < 2_000; i++) {
            String spoilt = spoil(random);
            BriefReading reading = reader.read(spoilt);
            if (reading instanceof BriefReading.Faulty faulty) {
                assertThat(faulty.faults()).as(spoilt).isNotEmpty().allSatisfy(fault -> {
                    assertThat(fault.field()).isNotNull();
                    assertThat(fault.mend()).isNotBlank();
                    assertThat(fault.sentence()).contains(fault.mend());
                });
            } else {
                Tree tree = ((BriefReading.Read) reading).brief().tree();
                assertThat(tree.height().feet()).as(spoilt).isBetween(3 - 1e-6, 20 + 1e-6);
                assertThat(tree.widestDiameter().metres() / tree.height().metres()).as(spoilt).isBetween(Tree.NARROWEST - 1e-6, Tree.WIDEST + 1e-6);
                read++;
            }
        }
        // A few changes do no harm, such as another digit of the budget.
        assertThat(read).isBetween(5, 200);
    }

    private static String spoil(Random random) {
        StringBuilder text = new StringBuilder(GOOD);
        for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
            int at = random.nextInt(text.length());
            int to = Math.min(text.length(), at + 1 + random.nextInt(random.nextInt(12) + 1));
            switch (random.nextInt(5)) {
                case 0 -> text.delete(at, to);
                case 1 -> text.insert(at, PIECES[random.nextInt(PIECES.length)]);
                case 2 -> text.replace(at, to, PIECES[random.nextInt(PIECES.length)]);
                case 3 -> text.setCharAt(at, (char) (32 + random.nextInt(96)));
                default -> text.insert(at, text.substring(at, to));
            }
            if (text.length() == 0) {
                text.append(' ');
            }
        }
        return text.toString();
    }
}
