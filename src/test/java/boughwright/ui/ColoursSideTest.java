package boughwright.ui;

import static com.github.mvysny.kaributesting.v10.LocatorJ._click;
import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.colour.Match;
import boughwright.consultation.Saved;
import boughwright.needs.Adjustments;
import boughwright.palette.Pair;
import boughwright.palette.PaletteReading;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import com.github.mvysny.kaributesting.v10.MockVaadin;
import com.github.mvysny.kaributesting.v10.Routes;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ColoursSideTest {

    private final SavedHere here = new SavedHere();

    @BeforeEach
    void openBrowser() {
        MockVaadin.setup(new Routes());
    }

    @AfterEach
    void closeBrowser() {
        MockVaadin.tearDown();
    }

    private ProposalView colours(String palette) {
        return view("{\"tree\": {\"height\": \"7 ft 6 in\"}, \"palette\": \"" + palette + "\"}");
    }

    private ProposalView view(String brief) {
        Saved saved = here.begin(brief);
        ProposalView view = new ProposalView(here.books);
        UI.getCurrent().add(view);
        here.books.open().open(saved.code(), here.marks);
        view.setParameter(null, saved.code());
        _click(button(view, "Colours"));
        return view;
    }

    private static NativeButton button(Component within, String start) {
        return _find(within, NativeButton.class).stream().filter(b -> text(b).startsWith(start)).findFirst()
                .orElseThrow(() -> new AssertionError("no button " + start));
    }

    private static String text(Component component) {
        return component.getElement().getTextRecursively();
    }

    private static PaletteReading reading(ProposalView view) {
        return reading(view.proposing().proposal().orElseThrow());
    }

    private static PaletteReading reading(Proposal p) {
        return PaletteReading.of(p.brief(), p.needs(), p.catalogue(), p.kit());
    }

    private static boolean pressed(NativeButton button) {
        return "true".equals(button.getElement().getAttribute("aria-pressed"));
    }

    @Test
    void the_side_tells_the_scheme_the_shares_the_near_misses_and_every_colour_in_words() {
        ProposalView view = colours("cranberry-and-pine");

        assertThat(text(view)).contains("The scheme", "red and amber", "Cranberry & pine by itself: Three hues", "second with ground", "60 %", "Near misses",
                "Light and dark", "Every colour in words", "main (red)");
        assertThat(_find(view, Div.class, spec -> spec.withClasses("eye-chart"))).hasSize(3)
                .allSatisfy(drawn -> assertThat(drawn.getElement().getProperty("innerHTML")).startsWith("<svg").contains("<desc"));
    }

    @Test
    void a_preview_changes_how_the_stage_is_seen_and_says_what_to_mind() {
        ProposalView view = colours("cranberry-and-pine");
        Div stage = _get(view, Div.class, spec -> spec.withClasses("stage-box"));

        _click(button(view, "Without red"));

        assertThat(stage.getClassNames()).contains("seen-without-red");
        assertThat(pressed(button(view, "Without red"))).isTrue();
        assertThat(pressed(button(view, "As it is"))).isFalse();
        assertThat(text(view)).contains("Seen without red (protanopia)", "Main (red) and ground (green) are hard to tell apart", "About 1 man in 12");

        _click(button(view, "Warm light"));

        assertThat(stage.getClassNames()).contains("seen-lamp").doesNotContain("seen-without-red");
        assertThat(text(view)).contains("By a warm lamp (2700 K)", "makes up for about 75 %").doesNotContain("1 man in 12");
    }

    @Test
    void a_preview_stays_on_the_other_sides_and_the_badge_ends_it() {
        ProposalView view = colours("cranberry-and-pine");
        Div stage = _get(view, Div.class, spec -> spec.withClasses("stage-box"));
        _click(button(view, "Without green"));
        _click(button(view, "Kit"));
        Div badge = _get(view, Div.class, spec -> spec.withClasses("badge"));
        assertThat(text(badge)).contains("Seen without green (deuteranopia)");
        assertThat(stage.getClassNames()).contains("seen-without-green");

        _click(button(badge, "As it is"));

        assertThat(stage.getClassNames()).doesNotContain("seen-without-green");
        assertThat(badge.isVisible()).isFalse();
        _click(button(view, "Colours"));
        assertThat(pressed(button(_get(view, Div.class, spec -> spec.withClasses("previews")), "As it is"))).isTrue();
    }

    @Test
    void a_near_miss_is_mended_by_a_product_that_lies_closer_or_further_and_is_gone() {
        ProposalView view = colours("plum-and-honey");
        List<Pair> before = reading(view).kit().worst(3);
        Pair first = before.get(0);
        assertThat(text(view)).contains("“" + first.one().shortName() + "” and “" + first.other().shortName() + "” will look like a mistake");

        Div card = _find(view, Div.class, spec -> spec.withClasses("near-miss")).get(0);
        _click(button(card, "Something else than “" + first.one().shortName() + "”"));
        List<NativeButton> offers = _find(card, NativeButton.class, spec -> spec.withClasses("card"));
        assertThat(offers).isNotEmpty().allSatisfy(o -> assertThat(text(o)).containsPattern("(Closer|Further): ΔE00 \\d"));
        _click(offers.get(0));

        PaletteReading now = reading(view);
        String other = first.other().id();
        double difference = now.kit().tones().stream().filter(t -> t.id().equals(first.one().id())).findFirst().orElseThrow().lab()
                .difference(now.kit().tones().stream().filter(t -> t.id().equals(other)).findFirst().orElseThrow().lab());
        assertThat(Match.of(difference)).isNotEqualTo(Match.NEAR_MISS);
        assertThat(text(view)).contains("What has changed", "The scheme");
    }

    @Test
    void a_kit_without_near_misses_says_so() {
        Designer designer = KioskFixture.designer();
        String without = designer.rulebook().choices().looks().stream().flatMap(l -> designer.rulebook().choices().palettes().stream()
                        .map(p -> "{\"tree\": {\"height\": \"3 ft\"}, \"abundance\": \"restrained\", \"look\": \"%s\", \"palette\": \"%s\"}".formatted(l.id(), p.id())))
                .filter(brief -> reading(((Outcome.Made) designer.propose(brief, Adjustments.NONE, Designer.SEED)).proposal()).kit().worst(1).isEmpty())
                .findFirst().orElseThrow();

        assertThat(text(view(without))).contains("No two products nearly match");
    }

    @Test
    void every_preview_has_its_words() {
        for (Preview preview : Preview.values()) {
            assertThat(preview.button()).isNotBlank();
            assertThat(preview.title()).isNotBlank();
            assertThat(preview.mind()).isNotBlank().doesNotContain("{");
        }
    }

    @Test
    void filters_for_all_previews_stand_once_on_the_page() {
        ProposalView view = colours("copper-and-cream");
        String filters = _get(view, Div.class, spec -> spec.withClasses("filters")).getElement().getProperty("innerHTML");
        for (Preview preview : Preview.values()) {
            assertThat(filters.split("id=\"" + preview.className() + "\"", -1)).hasSize(preview == Preview.AS_IT_IS ? 1 : 2);
        }
    }
}
