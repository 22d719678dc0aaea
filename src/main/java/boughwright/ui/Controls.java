package boughwright.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.dom.Element;
import java.util.Map;
import java.util.function.Consumer;

/** The few controls from which all screens are made: cards, pills, fields. Each is at least 44 px high in the style sheet. */
final class Controls {

    private Controls() {
    }

    /** A large card that is chosen or not. */
    static NativeButton card(Component picture, String title, String words, boolean chosen, Runnable onClick) {
        NativeButton card = new NativeButton();
        card.addClassName("card");
        pressed(card, chosen);
        if (picture != null) {
            card.add(picture);
        }
        Span head = new Span(title);
        head.addClassName("card-title");
        card.add(head);
        if (!words.isEmpty()) {
            Span text = new Span(words);
            text.addClassName("card-words");
            card.add(text);
        }
        SteadyButtons.touched(card, onClick);
        return card;
    }

    /** A small rounded button that is chosen or not. */
    static NativeButton pill(String text, boolean chosen, Runnable onClick) {
        NativeButton pill = new NativeButton(text);
        SteadyButtons.touched(pill, onClick);
        pill.addClassName("pill");
        pressed(pill, chosen);
        return pill;
    }

    static NativeButton button(String text, String kind, Runnable onClick) {
        NativeButton button = new NativeButton(text);
        SteadyButtons.touched(button, onClick);
        button.addClassNames("button", kind);
        return button;
    }

    static NativeButton link(String text, Runnable onClick) {
        NativeButton link = new NativeButton(text);
        SteadyButtons.touched(link, onClick);
        link.addClassName("link");
        return link;
    }

    static void pressed(NativeButton button, boolean pressed) {
        button.getElement().setAttribute("aria-pressed", String.valueOf(pressed));
    }

    /** A labelled field for one line of text that reports each change. */
    static Div field(String id, String label, String placeholder, String value, Consumer<String> onChange) {
        Input input = new Input(ValueChangeMode.ON_CHANGE);
        quiet(input);
        input.setPlaceholder(placeholder);
        input.setValue(value);
        input.addValueChangeListener(e -> {
            if (e.isFromClient()) {
                onChange.accept(e.getValue().strip());
            }
        });
        return labelled(id, label, input);
    }

    /** The browser keeps nothing of what is typed here: it is a customer's, and the next one sits down at the same tablet. */
    static void quiet(Input input) {
        input.getElement().setAttribute("autocomplete", "off").setAttribute("autocorrect", "off");
    }

    /** An input under its label. */
    static Div labelled(String id, String label, Input input) {
        input.setId(id);
        NativeLabel name = new NativeLabel(label);
        name.setFor(input);
        Div field = new Div(name, input);
        field.addClassName("field");
        return field;
    }

    /**
     * A labelled list of which one is chosen.
     *
     * @param options what is chosen by what is read, in their order
     */
    static Div select(String id, String label, Map<String, String> options, String chosen, Consumer<String> onChange) {
        Element select = new Element("select");
        select.setAttribute("id", id);
        options.forEach((value, words) -> {
            Element option = new Element("option").setAttribute("value", value).setText(words);
            if (value.equals(chosen)) {
                option.setAttribute("selected", true);
            }
            select.appendChild(option);
        });
        select.addEventListener("change", e -> onChange.accept(e.getEventData().getString("event.target.value"))).addEventData("event.target.value");
        NativeLabel name = new NativeLabel(label);
        name.getElement().setAttribute("for", id);
        Div box = new Div();
        box.addClassName("select");
        box.getElement().appendChild(select);
        Div field = new Div(name, box);
        field.addClassName("field");
        return field;
    }

    /** Words as SVG takes them. */
    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }

    /** Something drawn: the text is trusted SVG of our own making, every word in it escaped where it was written. */
    static Div drawn(String svg) {
        Div box = new Div();
        box.getElement().setProperty("innerHTML", svg);
        return box;
    }

    static Span words(String text, String className) {
        Span span = new Span(text);
        span.addClassName(className);
        return span;
    }
}
