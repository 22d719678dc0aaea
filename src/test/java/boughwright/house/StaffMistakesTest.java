package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.measure.Units;
import boughwright.needs.HouseNumber;
import boughwright.needs.HouseNumber.Guard;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class StaffMistakesTest {

    private static final int ALL = 100;
    /** What a sentence begins with, or goes on with after "or", when it tells what to do. */
    private static final Pattern MEND = Pattern.compile("(?:[.!?;:] |^|, or"
            + " )(?:Raise|raise|Lower|lower|Let|let|Choose|Type|Write|Fill|Add|add|Give|Delete|Take|Shorten|Join) ");
    private static final List<StaffMistakes.Mistake> MISTAKES = StaffMistakes.seeded(2026, ALL);
    private static final Map<StaffMistakes.Mistake, List<Complaint>> COMPLAINTS = new LinkedHashMap<>();

    static {
        HouseCheck check = new HouseCheck(Units.FEET);
        MISTAKES.forEach(mistake -> COMPLAINTS.put(mistake, check.of(mistake.rules())));
    }

    @Test
    void a_hundred_seeded_mistakes_are_all_told_with_their_table_row_and_column_and_how_to_mend_them() {
        List<String> untold = new ArrayList<>();
        COMPLAINTS.forEach((mistake, complaints) -> {
            if (complaints.stream().noneMatch(c -> mistake.toldBy(c) && mends(c.message()))) {
                untold.add(mistake.name() + " -> " + complaints.stream().map(Complaint::sentence).toList());
            }
        });
        assertThat(MISTAKES).hasSize(ALL).extracting(StaffMistakes.Mistake::name).doesNotHaveDuplicates();
        assertThat(untold).isEmpty();
    }

    @Test
    void no_mistake_raises_a_complaint_where_nothing_was_changed() {
        COMPLAINTS.forEach((mistake, complaints) -> assertThat(complaints).as(mistake.name()).allMatch(mistake::explains));
    }

    @Test
    void no_mistake_raises_a_complaint_that_leaves_open_what_to_do() {
        COMPLAINTS.forEach((mistake, complaints) -> assertThat(complaints).as(mistake.name()).allMatch(c -> mends(c.message())));
    }

    /** A number of safety cannot be laxer, so what is told is why. */
    private static boolean mends(String message) {
        return MEND.matcher(message).find() || Arrays.stream(HouseNumber.values()).filter(n -> n.guard() != Guard.NONE)
                .anyMatch(n -> message.contains(Text.of("house.why." + n.word())));
    }
}
