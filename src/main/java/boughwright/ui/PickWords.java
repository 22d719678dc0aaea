package boughwright.ui;

import boughwright.needs.Trait;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Some of a few words, folded away until somebody wants to change them; none of them means any. */
final class PickWords extends Div {

    private final Span shown = new Span();
    private final List<String> choices;
    private final List<String> held;

    /**
     * @param label what is chosen, for screen readers
     * @param changed called with the words in the order of the choices; none when all are chosen
     */
    PickWords(String label, List<String> choices, List<String> chosen, Consumer<List<String>> changed) {
        this.choices = choices;
        this.held = new ArrayList<>(chosen);
        addClassName("pick");
        NativeDetails details = new NativeDetails();
        details.setSummary(Controls.words(label + ": ", "unseen"), shown);
        details.getElement().setAttribute("name", "pick");
        Div list = new Div();
        list.addClassName("pick-list");
        for (String choice : choices) {
            Element box = new Element("input");
            box.setAttribute("type", "checkbox");
            if (held.contains(choice)) {
                box.setAttribute("checked", true);
            }
            box.addEventListener("change", event -> {
                boolean now = event.getEventData().getBoolean("event.target.checked");
                held.remove(choice);
                if (now) {
                    held.add(choice);
                }
                List<String> words = this.choices.stream().filter(held::contains).toList();
                show();
                changed.accept(words.size() == this.choices.size() ? List.of() : words);
            }).addEventData("event.target.checked");
            Element row = new Element("label");
            row.appendChild(box, Element.createText(Trait.word(choice)));
            list.getElement().appendChild(row);
        }
        details.setContent(list);
        add(details);
        show();
    }

    private void show() {
        List<String> words = choices.stream().filter(held::contains).toList();
        shown.setText(words.isEmpty() || words.size() == choices.size() ? Text.of("house.any")
                : String.join(", ", words.stream().map(w -> Trait.word(w)).toList()));
        long unknown = held.stream().filter(w -> !choices.contains(w)).count();
        if (unknown > 0) {
            shown.setText(String.join(", ", held));
        }
    }
}
