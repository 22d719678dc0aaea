package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.brief.BriefReader;
import boughwright.brief.BriefReading;
import boughwright.brief.SeenFrom;
import boughwright.measure.Length;
import org.junit.jupiter.api.Test;

class InterviewTest {

    private final Interview interview = new Interview(() -> KioskFixture.designer().rulebook().choices());

    private Brief read() {
        return ((BriefReading.Read) new BriefReader(KioskFixture.designer().rulebook().choices()).read(interview.answers().brief())).brief();
    }

    @Test
    void it_does_not_go_on_without_a_height_and_says_what_is_missing() {
        assertThat(interview.next()).hasValueSatisfying(f -> assertThat(f.field()).isEqualTo("tree.height"));
        assertThat(interview.at()).isEqualTo(Question.TREE);

        interview.answers().height = "9 ft";
        assertThat(interview.next()).isEmpty();
        assertThat(interview.at()).isEqualTo(Question.SEEN_FROM);
    }

    @Test
    void back_returns_to_the_question_before_and_keeps_the_answers() {
        interview.answers().height = "9 ft";
        interview.next();
        interview.answers().seenFrom = SeenFrom.ROUND;

        interview.back();

        assertThat(interview.at()).isEqualTo(Question.TREE);
        assertThat(interview.answers().height).isEqualTo("9 ft");
        assertThat(interview.answers().seenFrom).isEqualTo(SeenFrom.ROUND);
    }

    @Test
    void a_budget_that_is_no_amount_is_told_on_its_own_page() {
        interview.answers().height = "9 ft";
        while (interview.at() != Question.BUDGET) {
            assertThat(interview.next()).isEmpty();
        }
        interview.answers().budget = "lots";

        assertThat(interview.next()).hasValueSatisfying(f -> assertThat(f.field()).isEqualTo("budget"));
        assertThat(interview.at()).isEqualTo(Question.BUDGET);
    }

    @Test
    void amounts_are_taken_as_people_type_them() {
        assertThat(Amounts.plain("$700")).isEqualTo("700");
        assertThat(Amounts.plain(" $ 1,000.50 ")).isEqualTo("1000.50");
        assertThat(Amounts.plain("700 €")).isEqualTo("700");
        assertThat(Amounts.plain("12,50")).isEqualTo("12,50");
        assertThat(Amounts.plain("lots")).isEqualTo("lots");
    }

    @Test
    void the_answers_become_the_brief() {
        Answers answers = interview.answers();
        answers.height = "7 ft 6 in";
        answers.diameter = "50 in";
        answers.seenFrom = SeenFrom.BAY;
        answers.ceiling = "9 ft";
        answers.pets = true;
        answers.look = "frost-fair";
        answers.palette = "midnight-brass";
        answers.abundance = Abundance.LAVISH;
        answers.budget = "400.00";
        answers.owned.put("LK-BL-0354", 6);

        Brief brief = read();

        assertThat(brief.tree().height().inches()).isCloseTo(90, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(brief.tree().widestDiameter()).isEqualTo(Length.ofInches(50));
        assertThat(brief.tree().seenFrom()).isEqualTo(SeenFrom.BAY);
        assertThat(brief.household().pets()).isTrue();
        assertThat(brief.look().id()).isEqualTo("frost-fair");
        assertThat(brief.palette().id()).isEqualTo("midnight-brass");
        assertThat(brief.budget()).hasValueSatisfying(b -> assertThat(b.decimal()).isEqualTo("400.00"));
        assertThat(brief.owned()).hasSize(1);
    }
}
