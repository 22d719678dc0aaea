package boughwright.ui;

import boughwright.text.Language;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;

/** The languages to choose from, each under its own name, for the bar of a screen. */
final class LanguageChoice extends Div {

    LanguageChoice() {
        addClassName("languages");
        getElement().setAttribute("role", "group");
        getElement().setAttribute("aria-label", Text.of("language.choose"));
        for (Language language : Language.values()) {
            NativeButton button = Controls.pill(language.ownName(), language == Language.now(), () -> choose(language));
            button.getElement().setAttribute("lang", language.tag());
            add(button);
        }
    }

    private static void choose(Language language) {
        if (language != Language.now()) {
            Spoken.choose(language);
        }
    }
}
