package boughwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.brief.BriefReader;
import boughwright.brief.BriefReading;
import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.measure.Length;
import boughwright.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class InterviewTest {

    private final List<String> kept = new ArrayList<>();
    private final Interview interview = new Interview(new Answers(), Question.TREE, () -> KioskFixture.designer().rulebook().choices(),
            (answers, at) -> kept.add(at + " " + answers.height));

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
    void each_answer_and_each_step_is_kept_with_where_it_stands() {
        interview.answers().height = "9 ft";
        interview.answered();
        interview.next();
        interview.back();

        assertThat(kept).containsExactly("TREE 9 ft", "SEEN_FROM 9 ft", "TREE 9 ft");
    }

    @Test
    void answers_are_read_again_as_they_were_written() {
        for (long seed = 1; seed <= 500; seed++) {
            Answers given = some(new SplittableRandom(seed));

            Answers read = Answers.of(given.brief(), given.units);

            assertThat(read).as("seed %d", seed).usingRecursiveComparison().isEqualTo(given);
            assertThat(read.brief()).as("seed %d", seed).isEqualTo(given.brief());
        }
    }

    /** Answers of every kind, also such as no shop would take. */
    private static Answers some(SplittableRandom random) {
        Answers answers = new Answers();
        answers.units = pick(random, Units.values());
        answers.height = pick(random, "", "9 ft", "2.3 m", "tall “ish”, \\ about");
        answers.diameter = pick(random, "", "50 in", "1,2");
        answers.fullness = pick(random, Fullness.values());
        answers.seenFrom = pick(random, SeenFrom.values());
        answers.lit = random.nextBoolean();
        answers.real = random.nextBoolean();
        answers.ceiling = pick(random, "", "10 ft");
        answers.nearHeat = random.nextBoolean();
        answers.toddlers = random.nextBoolean();
        answers.pets = random.nextBoolean();
        answers.look = pick(random, "", "woodland", "gone-since");
        if (random.nextBoolean()) {
            for (String role : new String[] {"main", "second", "spark", "ground"}) {
                answers.ownColours.put(role, String.format("#%06x", random.nextInt(1 << 24)));
            }
        } else {
            answers.palette = pick(random, "", "midnight-brass");
        }
        answers.abundance = pick(random, Abundance.values());
        answers.budget = pick(random, "", "650.00", "lots");
        for (int i = random.nextInt(4); i > 0; i--) {
            answers.owned.put("LK-" + random.nextInt(1000), 1 + random.nextInt(500));
            answers.ownedInWords.add(pick(random, "24 matte red 80 mm balls", "Großmutters „Stern“", "{\"sku\": 1}") + i);
        }
        return answers;
    }

    @SafeVarargs
    private static <T> T pick(SplittableRandom random, T... from) {
        return from[random.nextInt(from.length)];
    }

    @Test
    void a_brief_that_came_over_the_interface_can_be_gone_through_as_an_interview() {
        assertThat(Answers.of("", Units.METRES)).usingRecursiveComparison().isEqualTo(metric());
        Answers answers = Answers.of("{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"650.00\"}", Units.FEET);
        assertThat(answers.height).isEqualTo("9 ft");
        assertThat(answers.budget).isEqualTo("650.00");
        assertThat(answers.abundance).isEqualTo(Abundance.GENEROUS);
    }

    private static Answers metric() {
        Answers answers = new Answers();
        answers.units = Units.METRES;
        return answers;
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
        assertThat(Amounts.plain("12,50")).isEqualTo("12.50");
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
