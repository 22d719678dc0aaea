package boughwright.ui;

import static com.github.mvysny.kaributesting.v10.LocatorJ._click;
import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static com.github.mvysny.kaributesting.v10.LocatorJ._fireValueChange;
import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.when;

import boughwright.consultation.Interviews;
import boughwright.consultation.Saved;
import boughwright.measure.Units;
import com.github.mvysny.kaributesting.v10.MockVaadin;
import com.github.mvysny.kaributesting.v10.Routes;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ScreensTest {

    private final SavedHere here = new SavedHere();

    @BeforeEach
    void openBrowser() {
        MockVaadin.setup(new Routes());
    }

    @AfterEach
    void closeBrowser() {
        MockVaadin.tearDown();
    }

    private static NativeButton button(String start) {
        return _find(NativeButton.class).stream().filter(b -> text(b).startsWith(start)).findFirst()
                .orElseThrow(() -> new AssertionError("no button " + start));
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }

    /** On a busy machine a screen may show first that it is working. */
    private static void patiently(Runnable check) {
        long end = System.nanoTime() + Duration.ofSeconds(60).toNanos();
        while (true) {
            try {
                check.run();
                return;
            } catch (AssertionError notYet) {
                if (System.nanoTime() > end) {
                    throw notYet;
                }
                LockSupport.parkNanos(100_000_000);
                MockVaadin.clientRoundtrip();
            }
        }
    }

    private InterviewView interview() {
        InterviewView view = new InterviewView(here.books);
        UI.getCurrent().add(view);
        view.setParameter(null, null);
        return view;
    }

    private ProposalView proposal(String brief) {
        Saved saved = here.begin(brief);
        ProposalView view = new ProposalView(here.books);
        UI.getCurrent().add(view);
        here.books.open().open(saved.code(), here.marks);
        view.setParameter(null, saved.code());
        return view;
    }

    @Test
    void the_tree_in_the_room_grows_with_the_answer() {
        InterviewView view = interview();
        Drawing room = _get(view, Drawing.class);
        String unknown = room.svg();

        _click(button("9 ft"));

        assertThat(unknown).contains("not known yet");
        assertThat(room.svg()).contains("A bare tree of 9 ft").contains("5 ft 9 in");
        assertThat(button("9 ft").getElement().getAttribute("aria-pressed")).isEqualTo("true");
    }

    @Test
    void each_answer_is_kept_under_a_code_and_the_interview_goes_on_where_it_stood() {
        interview();
        assertThat(here.begun).as("nothing was answered yet").isEmpty();
        _click(button("9 ft"));
        _click(button("Next"));
        _click(button("Sparse"));
        assertThat(here.begun.get("kelp-4-moss").question()).isEqualTo("seen-from");
        UI.getCurrent().removeAll();

        InterviewView again = interview();

        assertThat(_get(H1.class).getText()).isEqualTo("Where will it be seen from?");
        assertThat(button("Sparse").getElement().getAttribute("aria-pressed")).isEqualTo("true");
        assertThat(text(again)).contains("Consultation KELP 4 MOSS", "2 of 9");
    }

    @Test
    void begin_begins_another_consultation_and_leaves_the_one_before() {
        interview();
        _click(button("9 ft"));
        here.books.open().beginAnother();
        UI.getCurrent().removeAll();

        interview();

        assertThat(button("9 ft").getElement().getAttribute("aria-pressed")).isEqualTo("false");
    }

    @Test
    void what_is_no_longer_sold_can_still_be_taken_out_of_what_is_owned() {
        here.interviews.begin(new Interviews.State("owned", "{\"tree\": {\"height\": \"9 ft\"}, \"owned\": [{\"sku\": \"OLD-1\", \"quantity\": 3}]}", Units.FEET, "en"));
        here.books.open().open("kelp-4-moss", here.marks);

        InterviewView view = interview();

        assertThat(text(view)).contains("OLD-1");
    }

    @Test
    void a_plan_whose_code_was_not_typed_here_asks_for_it() {
        Saved saved = here.begin("{\"tree\": {\"height\": \"9 ft\"}}");
        ProposalView view = new ProposalView(here.books);
        UI.getCurrent().add(view);

        view.setParameter(null, saved.code());

        assertThat(text(view)).contains("This plan opens with its code").doesNotContain("KELP 4 MOSS", "Woodland");
    }

    @Test
    void codes_are_typed_wrongly_a_few_times_and_no_more() {
        UI.getCurrent().add(new CodeEntry(here.books, "Why"));
        type("oak-2-elm");
        assertThat(fault()).contains("No proposal has the code");
        here.begin("{\"tree\": {\"height\": \"9 ft\"}}");
        when(here.tries.begin()).thenReturn(Optional.of(Duration.ofSeconds(150)));
        type("kelp-4-moss");
        assertThat(fault()).contains("Wait 3 minutes");
        assertThat(here.books.open().none()).isTrue();
    }

    private static void type(String code) {
        _get(Input.class, spec -> spec.withId("code")).setValue(code);
        _click(button("Open"));
    }

    private static String fault() {
        return _get(Paragraph.class, spec -> spec.withClasses("fault")).getText();
    }

    @Test
    void going_on_without_a_height_shows_what_to_do() {
        interview();

        _click(button("Next"));

        assertThat(_get(Paragraph.class, spec -> spec.withClasses("fault")).getText()).contains("from 3 ft to 20 ft");
        assertThat(_get(H1.class).getText()).isEqualTo("How tall is your tree?");
    }

    @Test
    void every_question_can_be_walked_forth_and_back_and_says_why_it_asks() {
        interview();
        _click(button("9 ft"));
        for (Question question : Question.values()) {
            assertThat(_get(H1.class).getText()).isEqualTo(boughwright.text.Text.of(question.titleKey()));
            _click(button("Why do we ask?"));
            assertThat(_find(Paragraph.class).stream().map(Paragraph::getText)).contains(boughwright.text.Text.of(question.whyKey()));
            if (question != Question.OWNED) {
                _click(button("Next"));
            }
        }
        for (int i = 1; i < Question.values().length; i++) {
            _click(button("Back"));
        }
        assertThat(_get(H1.class).getText()).isEqualTo("How tall is your tree?");
    }

    @Test
    void the_palettes_are_shown_on_the_customers_own_tree() {
        InterviewView view = interview();
        _click(button("9 ft"));
        for (int i = 0; i < Question.PALETTE.ordinal(); i++) {
            _click(button("Next"));
        }
        Drawing room = _get(view, Drawing.class);
        assertThat(room.svg()).contains("A tree dressed in your colours", "Copper &amp; cream");

        _click(button("Midnight brass"));

        assertThat(room.svg()).contains("Midnight brass");
    }

    @Test
    void feet_can_be_switched_to_metres_without_losing_the_answer() {
        InterviewView view = interview();
        _click(button("9 ft"));

        _click(button("ft / in"));

        Drawing room = _get(view, Drawing.class);
        assertThat(room.svg()).contains("2.74 m").contains("1.75 m");
    }

    @Test
    void the_proposal_shows_each_line_with_its_price_shelf_and_reason() {
        ProposalView view = proposal("{\"tree\": {\"height\": \"9 ft\"}}");

        String all = text(view);
        assertThat(all).contains("A Woodland tree of 9 ft", "Consultation KELP 4 MOSS", "no limit", "shelf ");
        NativeButton why = _find(NativeButton.class).stream().filter(b -> b.getText().equals("Why 9?")).findFirst().orElseThrow();
        _click(why);
        assertThat(text(view)).contains("House rule “", "edition Winter 26");
    }

    @Test
    void a_layer_is_switched_off_and_on_in_the_drawing() {
        ProposalView view = proposal("{\"tree\": {\"height\": \"9 ft\"}}");
        Div picture = _get(view, Div.class, spec -> spec.withClasses("picture"));

        _click(button("Ribbon"));
        assertThat(picture.getElement().getAttribute("data-hide")).isEqualTo("ribbon");
        _click(button("Ribbon"));
        assertThat(picture.getElement().getAttribute("data-hide")).isEmpty();
    }

    @Test
    void more_of_a_line_is_asked_for_and_the_proposal_follows() {
        proposal("{\"tree\": {\"height\": \"9 ft\"}}");
        Input clusters = _find(Input.class).stream()
                .filter(i -> String.valueOf(i.getElement().getAttribute("aria-label")).contains("clusters")).findFirst().orElseThrow();

        clusters.setValue("10");
        _fireValueChange(clusters, true);

        assertThat(here.consultations.open("kelp-4-moss").orElseThrow().adjustments().quantities()).containsEntry("florals/cluster", 10);
    }

    @Test
    void the_ways_stand_side_by_side_each_with_its_drawing_total_and_sentence() {
        Saved saved = here.begin("{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"700.00\"}");
        WaysView view = new WaysView(here.books);
        UI.getCurrent().add(view);
        here.books.open().open(saved.code(), here.marks);
        view.setParameter(null, saved.code());

        patiently(() -> assertThat(text(view)).contains("As you asked", "within $700.00", "Leaner", " less"));
        assertThat(_find(view, Drawing.class)).hasSizeGreaterThanOrEqualTo(2).allSatisfy(picture -> assertThat(picture.svg()).startsWith("<svg"));
    }

    @Test
    void three_years_are_shown_with_what_joins_and_what_they_cost() {
        Saved saved = here.begin("{\"tree\": {\"height\": \"9 ft\"}}");
        YearsView view = new YearsView(here.books);
        UI.getCurrent().add(view);
        here.books.open().open(saved.code(), here.marks);
        view.setParameter(null, saved.code());

        patiently(() -> assertThat(text(view)).contains("This year", "Next year", "The year after", "All years together: $"));
    }

    @Test
    void why_this_one_compares_the_points_of_the_whole_scheme_term_by_term() {
        ProposalView view = proposal("{\"tree\": {\"height\": \"9 ft\"}}");

        _click(button("Why this one?"));

        assertThat(text(view)).contains("Points for the whole scheme", "All points", "The kit costs");
    }

    @Test
    void a_layer_is_left_out_and_put_back() {
        ProposalView view = proposal("{\"tree\": {\"height\": \"9 ft\"}}");
        _click(button("Change this layer"));
        _click(button("Leave out: Lights"));
        assertThat(text(view)).contains("You left this layer out.", "What has changed");
        _click(button("Put back: Lights"));
        assertThat(text(view)).doesNotContain("You left this layer out.");
    }

    @Test
    void when_no_kit_fits_the_ways_out_are_cards_to_take() {
        ProposalView view = proposal("{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"60.00\"}");
        assertThat(text(view)).contains("No kit fits all of this at once", "a budget of $60.00");

        _click(button("Raise the budget"));

        assertThat(text(view)).contains("A Woodland tree of 9 ft");
    }

    @Test
    void a_kept_plan_whose_palette_is_gone_says_so_and_offers_a_new_consultation() {
        here.keepStale("oak-9-fern", "{\"tree\": {\"height\": \"9 ft\"}, \"palette\": \"last-year\"}");
        ProposalView view = new ProposalView(here.books);
        here.books.open().open("oak-9-fern", here.marks);
        view.setParameter(null, "oak-9-fern");

        assertThat(text(view)).contains("can no longer be made", "last-year", "Start a new consultation");
    }

    @Test
    void an_unknown_code_is_answered_kindly() {
        ProposalView view = new ProposalView(here.books);
        here.books.open().open("oak-9-elm", here.marks);
        view.setParameter(null, "oak-9-elm");

        assertThat(text(view)).contains("No proposal has the code “oak-9-elm”");
    }
}
