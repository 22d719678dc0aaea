package boughwright.ui;

import boughwright.people.Colleague;
import boughwright.people.Entry;
import boughwright.people.People;
import boughwright.people.Secrets;
import boughwright.people.SignedIn;
import boughwright.people.Starter;
import boughwright.people.Tablet;
import boughwright.text.Text;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.Duration;
import java.util.List;

/**
 * The door before the screens for staff. On an enrolled tablet a card for each person and then their PIN; elsewhere name and password; at
 * first start the choice of a manager's; after a starting word the choice of one's own PIN and password.
 */
final class SignIn extends Div {

    private final StaffDoor door;
    private final People people;
    private final Runnable in;
    private final Paragraph fault = new Paragraph();

    /** @param in what happens once somebody is signed in */
    SignIn(StaffDoor door, Runnable in) {
        this.door = door;
        this.people = door.people();
        this.in = in;
        addClassName("sign-in");
        fault.addClassName("fault");
        fault.getElement().setAttribute("role", "alert");
        if (!people.begun()) {
            first();
        } else if (door.place().tablet().isPresent()) {
            cards();
        } else {
            password("");
        }
    }

    private void show(String title, String words, Component... content) {
        removeAll();
        fault.setText("");
        add(new H1(title));
        if (!words.isEmpty()) {
            add(new Paragraph(words));
        }
        add(fault);
        add(content);
    }

    private static Input input(String type) {
        // Each keystroke, so that the last field counts when Enter is pressed in it.
        Input input = new Input(ValueChangeMode.EAGER);
        input.setType(type);
        return input;
    }

    private static Input secret(boolean chosen) {
        Input input = input("password");
        input.getElement().setAttribute("autocomplete", chosen ? "new-password" : "current-password");
        return input;
    }

    private static Input digits() {
        Input input = input("password");
        input.getElement().setAttribute("inputmode", "numeric").setAttribute("autocomplete", "off").setAttribute("maxlength", String.valueOf(Secrets.LONGEST_PIN));
        return input;
    }

    private static NativeButton strong(String key, Runnable onClick) {
        NativeButton button = Controls.button(Text.of(key), "strong", onClick);
        button.addClickShortcut(Key.ENTER);
        return button;
    }

    private void first() {
        Input word = input("text");
        Input name = input("text");
        name.getElement().setAttribute("autocomplete", "username");
        Input password = secret(true);
        Input again = secret(true);
        word.getElement().setAttribute("autocomplete", "off");
        show(Text.of("staff.first"), Text.of("staff.first.words"), Controls.labelled("staff-word", Text.of("staff.word"), word),
                Controls.labelled("staff-name", Text.of("staff.name"), name), Controls.labelled("staff-password", Text.of("staff.password"), password), rules(),
                Controls.labelled("staff-again", Text.of("staff.again"), again), strong("staff.choose", () -> {
                    if (name.getValue().isBlank() || name.getValue().strip().length() > People.LONGEST_NAME) {
                        fault.setText(Text.of("staff.no-name", People.LONGEST_NAME));
                    } else if (!password.getValue().equals(again.getValue())) {
                        fault.setText(Text.of("staff.differ"));
                    } else {
                        People.fault(password.getValue(), name.getValue()).ifPresentOrElse(wrong -> fault.setText(faultWords(wrong)),
                                () -> finish(people.begin(word.getValue(), name.getValue(), password.getValue(), door.place()), "staff.wrong-word"));
                    }
                }));
    }

    private static Paragraph rules() {
        Paragraph rules = new Paragraph(Text.of("staff.password.rules", Secrets.SHORTEST_PASSWORD));
        rules.addClassName("soft");
        return rules;
    }

    private void password(String known) {
        Input name = input("text");
        name.setValue(known);
        name.getElement().setAttribute("autocomplete", "username");
        Input password = secret(false);
        show(Text.of("staff.sign-in"), Text.of("staff.sign-in.words"), Controls.labelled("staff-name", Text.of("staff.name"), name),
                Controls.labelled("staff-password", Text.of("staff.password-or-word"), password),
                strong("staff.enter", () -> finish(people.enter(name.getValue(), password.getValue(), door.place()), "staff.wrong")));
        if (door.place().tablet().isPresent()) {
            add(Controls.link(Text.of("staff.cards"), this::cards));
        }
    }

    private void cards() {
        List<Colleague> all = people.active();
        Div cards = new Div();
        cards.addClassNames("people-cards");
        for (Colleague each : all) {
            NativeButton card = new NativeButton("", e -> {
                if (each.hasPin()) {
                    pin(each);
                } else {
                    password(each.person().name());
                }
            });
            card.addClassNames("card", "person-card");
            card.add(initial(each.person().name()), Controls.words(each.person().name(), "card-title"),
                    Controls.words(Text.of("people.role." + each.person().role().word()), "card-words"));
            cards.add(card);
        }
        String tablet = door.place().tablet().map(Tablet::name).orElse("");
        show(Text.of("staff.who"), Text.of("staff.who.words", tablet), cards, Controls.link(Text.of("staff.by-password"), () -> password("")));
        addClassName("wide");
    }

    private static Span initial(String name) {
        Span initial = Controls.words(name.substring(0, name.offsetByCodePoints(0, 1)).toUpperCase(java.util.Locale.ROOT), "initial");
        initial.getElement().setAttribute("aria-hidden", "true");
        return initial;
    }

    private void pin(Colleague colleague) {
        Input pin = digits();
        Div pad = new Div();
        pad.addClassName("pin-pad");
        // The pad types in the browser itself, so that a slow line does not lose a digit.
        for (String key : List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "⌫", "0")) {
            NativeButton button = new NativeButton(key);
            button.addClassName("pin-key");
            button.getElement().setAttribute("type", "button");
            if (key.equals("⌫")) {
                button.getElement().setAttribute("aria-label", Text.of("staff.pin.back"));
            }
            pad.add(button);
        }
        NativeButton open = strong("staff.pin.open", () -> {
            String typed = pin.getValue();
            pin.setValue("");
            finish(people.pin(colleague.id(), typed, door.place()), "staff.wrong-pin");
        });
        open.addClassName("pin-open");
        pad.add(open);
        pad.getElement().executeJs("""
                const field = document.getElementById('staff-pin');
                field?.focus({preventScroll: true});
                this.addEventListener('click', e => {
                    const key = e.target.closest('.pin-key')?.textContent;
                    if (!key) return;
                    field.value = /[0-9]/.test(key) ? (field.value + key).slice(0, field.maxLength) : field.value.slice(0, -1);
                    field.dispatchEvent(new Event('input', {bubbles: true}));
                });""");
        removeClassName("wide");
        show(colleague.person().name(), "", Controls.labelled("staff-pin", Text.of("staff.pin"), pin), pad,
                Controls.link(Text.of("staff.not-me"), this::cards), Controls.link(Text.of("staff.use-password"), () -> password(colleague.person().name())));
    }

    private void choose(Starter starter) {
        Input pin = digits();
        Input pinAgain = digits();
        Input password = secret(true);
        Input again = secret(true);
        show(Text.of("staff.start-with", starter.name()), Text.of("staff.start-with.words"),
                Controls.labelled("staff-new-pin", Text.of("staff.new-pin", Secrets.SHORTEST_PIN, Secrets.LONGEST_PIN), pin),
                Controls.labelled("staff-new-pin-again", Text.of("staff.pin-again"), pinAgain),
                Controls.labelled("staff-new-password", Text.of("staff.new-password"), password), rules(),
                Controls.labelled("staff-new-password-again", Text.of("staff.again"), again), strong("staff.choose", () -> {
                    if (!pin.getValue().equals(pinAgain.getValue()) || !password.getValue().equals(again.getValue())) {
                        fault.setText(Text.of(pin.getValue().equals(pinAgain.getValue()) ? "staff.differ" : "staff.pins-differ"));
                        return;
                    }
                    People.Choice choice = people.choose(starter, pin.getValue(), password.getValue(), door.place());
                    if (choice instanceof People.Choice.Chosen chosen) {
                        enter(chosen.signedIn());
                    } else {
                        fault.setText(words(choice));
                    }
                }));
    }

    private static String faultWords(Secrets.Fault wrong) {
        return Text.of(wrong.key(), Secrets.SHORTEST_PASSWORD, Secrets.LONGEST_PASSWORD, Secrets.SHORTEST_PIN, Secrets.LONGEST_PIN, People.SHORTEST_MANAGER_PIN);
    }

    /** What is said of a choice that was not taken. */
    static String words(People.Choice choice) {
        if (choice instanceof People.Choice.Refused refused) {
            return Text.of(refused.key(), Secrets.SHORTEST_PASSWORD, Secrets.LONGEST_PASSWORD, Secrets.SHORTEST_PIN, Secrets.LONGEST_PIN, People.SHORTEST_MANAGER_PIN);
        }
        return choice instanceof People.Choice.Wait wait ? wait(wait.pause()) : "";
    }

    private static String wait(Duration pause) {
        return Text.of("staff.wait", pause.plusSeconds(59).toMinutes());
    }

    private void finish(Entry entry, String wrong) {
        if (entry instanceof Entry.In inside) {
            enter(inside.signedIn());
        } else if (entry instanceof Entry.Starts starts) {
            choose(starts.starter());
        } else {
            fault.setText(entry instanceof Entry.Wait wait ? wait(wait.pause()) : Text.of(wrong));
        }
    }

    private void enter(SignedIn signedIn) {
        Staff.signIn(signedIn);
        in.run();
    }
}
