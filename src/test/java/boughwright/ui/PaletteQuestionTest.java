package boughwright.ui;

import static com.github.mvysny.kaributesting.v10.LocatorJ._click;
import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.brief.Palette;
import boughwright.catalogue.ShelfMatch;
import boughwright.colour.Srgb;
import com.github.mvysny.kaributesting.v10.MockVaadin;
import com.github.mvysny.kaributesting.v10.Routes;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.UnorderedList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PaletteQuestionTest {

    private final Answers answers = new Answers();
    private PaletteQuestion question;
    private Div page;

    @BeforeEach
    void ask() {
        MockVaadin.setup(new Routes());
        question = new PaletteQuestion(answers, KioskFixture::designer, change -> {
            change.run();
            show();
        });
        show();
    }

    @AfterEach
    void leave() {
        MockVaadin.tearDown();
    }

    private void show() {
        UI.getCurrent().removeAll();
        page = new Div();
        question.show(page);
        UI.getCurrent().add(page);
    }

    private void own(String main, String second, String spark, String ground) {
        answers.ownColours.put("main", main);
        answers.ownColours.put("second", second);
        answers.ownColours.put("spark", spark);
        answers.ownColours.put("ground", ground);
        show();
    }

    private NativeButton card(String title) {
        return _find(NativeButton.class, spec -> spec.withClasses("card")).stream().filter(b -> b.getElement().getTextRecursively().startsWith(title)).findFirst()
                .orElseThrow();
    }

    @Test
    void a_ready_made_palette_is_chosen_and_nothing_is_matched_yet() {
        Palette other = KioskFixture.designer().rulebook().choices().palettes().get(3);
        _click(card(other.title()));
        assertThat(question.chosen()).isEqualTo(other);
        assertThat(card(other.title()).getElement().getAttribute("aria-pressed")).isEqualTo("true");
        assertThat(_find(UnorderedList.class, spec -> spec.withClasses("shelf"))).isEmpty();
    }

    @Test
    void own_colours_are_matched_with_what_the_shop_has_and_told_in_words() {
        Srgb stocked = ShelfMatch.nearest(KioskFixture.designer().catalogue(), new Srgb(0xa8, 0x1c, 0x28)).get(0).product().colour();
        own(stocked.hex(), "#00ff66", "#d08a4e", "#2b2430");
        assertThat(_find(UnorderedList.class, spec -> spec.withClasses("shelf"))).hasSize(4);
        String main = _find(Div.class, spec -> spec.withClasses("role")).get(0).getElement().getTextRecursively();
        String second = _find(Div.class, spec -> spec.withClasses("role")).get(1).getElement().getTextRecursively();
        assertThat(main).contains("the same to the eye").doesNotContain("Use the shop’s nearest");
        assertThat(second).contains("Nothing in the shop is near this colour.", "not near", "Use the shop’s nearest");
        assertThat(card("Mulberry").getElement().getAttribute("aria-pressed")).isEqualTo("false");
    }

    @Test
    void one_touch_takes_the_shops_nearest() {
        own("#8f2f4c", "#00ff66", "#d08a4e", "#2b2430");
        Srgb nearest = ShelfMatch.nearest(KioskFixture.designer().catalogue(), new Srgb(0, 255, 102)).get(0).product().colour();
        _click(_get(NativeButton.class, spec -> spec.withPredicate(b -> "Use the shop’s nearest: second".equals(b.getElement().getAttribute("aria-label")))));
        assertThat(answers.ownColours).containsEntry("second", nearest.hex()).containsEntry("main", "#8f2f4c");
        assertThat(question.chosen().second()).isEqualTo(nearest);
    }

    @Test
    void the_page_says_that_the_photo_is_not_kept() {
        assertThat(page.getElement().getTextRecursively()).contains("Your photo stays out of our books: only the colours are kept.");
    }
}
