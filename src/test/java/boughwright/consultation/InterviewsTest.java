package boughwright.consultation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.KioskFixture;
import boughwright.KioskServer;
import boughwright.measure.Units;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

class InterviewsTest extends KioskServer {

    private static final String BRIEF = "{\"tree\": {\"height\": \"2.3 m\"}}";

    @Autowired
    private Interviews interviews;
    @Autowired
    private Consultations consultations;
    @Autowired
    private ResumeMarks marks;
    @Autowired
    private JdbcClient database;

    private Consultation begun() {
        return interviews.begin(new Interviews.State("tree", "{}", Units.FEET, "en"));
    }

    @Test
    void every_answer_is_found_again_by_the_code_as_it_was_given() {
        Consultation begun = begun();

        interviews.keep(begun.code(), new Interviews.State("room", BRIEF, Units.METRES, "de"));

        Consultation found = interviews.open(begun.spoken()).orElseThrow();
        assertThat(found.question()).isEqualTo("room");
        assertThat(found.answers()).isEqualTo(BRIEF);
        assertThat(found.units()).isEqualTo(Units.METRES);
        assertThat(found.language()).isEqualTo("de");
        assertThat(found.begunAt()).isEqualTo(begun.begunAt());
        assertThat(found.touchedAt()).isAfterOrEqualTo(found.begunAt());
        assertThat(consultations.open(begun.code())).isEmpty();
    }

    @Test
    void what_an_interview_ends_in_is_kept_under_its_own_code() {
        Consultation begun = begun();
        Outcome outcome = KioskFixture.designer().propose(BRIEF, Adjustments.NONE, Designer.SEED);

        Saved first = consultations.go(begun.code(), BRIEF, outcome);
        Saved second = consultations.go(begun.code(), BRIEF, outcome);

        assertThat(first.code()).isEqualTo(begun.code());
        assertThat(first.revision()).isEqualTo(1);
        assertThat(second.revision()).isEqualTo(2);
        assertThatThrownBy(() -> consultations.go("oak-9-yew", BRIEF, outcome)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_proposal_that_no_interview_went_before_has_its_consultation_too() {
        Saved saved = consultations.begin(BRIEF, KioskFixture.designer().propose(BRIEF, Adjustments.NONE, Designer.SEED));

        assertThat(interviews.open(saved.code())).hasValueSatisfying(c -> {
            assertThat(c.units()).isEqualTo(Units.METRES);
            assertThat(c.answers()).isEmpty();
        });
    }

    @Test
    void a_nickname_is_kept_short_and_last_years_consultation_is_remembered() {
        Consultation begun = begun();
        interviews.nickname(begun.code(), "  the   one with the very very very very long hallway ");
        interviews.follow(begun.code(), "kelp-4-moss");

        assertThat(interviews.open(begun.code())).hasValueSatisfying(c -> {
            assertThat(c.nickname()).isEqualTo("the one with the very very very very lon");
            assertThat(c.follows()).isEqualTo(Optional.of("kelp-4-moss"));
        });
    }

    @Test
    void a_mark_opens_what_was_open_the_latest_last_until_it_is_forgotten_or_runs_out() {
        String mark = ResumeMarks.fresh();
        assertThat(java.util.Base64.getUrlDecoder().decode(mark)).hasSize(16);
        marks.open(mark, "kelp-4-moss");
        marks.open(mark, "ash-2-yew");
        marks.open(mark, "kelp-4-moss");
        assertThat(marks.codes(mark)).containsExactly("ash-2-yew", "kelp-4-moss");
        assertThat(marks.codes(ResumeMarks.fresh())).isEmpty();
        assertThat(database.sql("select count(*) from resume_mark where hash = :mark").param("mark", mark).query(Integer.class).single()).isZero();

        database.sql("update resume_mark set until = :past where code = 'ash-2-yew'").param("past", java.time.LocalDateTime.now(java.time.ZoneOffset.UTC).minusSeconds(1)).update();
        assertThat(marks.codes(mark)).containsExactly("kelp-4-moss");
        marks.forget(mark);
        assertThat(marks.codes(mark)).isEmpty();
    }
}
