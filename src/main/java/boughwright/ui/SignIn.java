package boughwright.ui;

import boughwright.publishing.HousePassword;
import boughwright.text.Text;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.data.value.ValueChangeMode;

/** The door to the house rules: a password, or at first start the choice of one. */
final class SignIn extends Div {

    private final HousePassword account;
    private final Runnable in;
    private final Paragraph fault = new Paragraph();
    private final Input name = input("text");
    private final Input word = input("text");
    private final Input password = input("password");
    private final Input again = input("password");

    SignIn(HousePassword account, Runnable in) {
        this.account = account;
        this.in = in;
        addClassName("sign-in");
        fault.addClassName("fault");
        fault.getElement().setAttribute("role", "alert");
        boolean first = !account.hasPassword();
        add(new H1(Text.of(first ? "staff.first" : "staff.sign-in")), new Paragraph(Text.of(first ? "staff.first.words" : "staff.sign-in.words")), fault);
        name.getElement().setAttribute("autocomplete", "name");
        password.getElement().setAttribute("autocomplete", first ? "new-password" : "current-password");
        again.getElement().setAttribute("autocomplete", "new-password");
        if (first) {
            add(Controls.labelled("staff-word", Text.of("staff.word"), word));
        }
        add(Controls.labelled("staff-name", Text.of("staff.name"), name), Controls.labelled("staff-password", Text.of("staff.password"), password));
        if (first) {
            add(Controls.labelled("staff-again", Text.of("staff.again"), again));
        }
        NativeButton enter = Controls.button(Text.of(first ? "staff.choose" : "staff.enter"), "strong", first ? this::begin : this::enter);
        enter.addClickShortcut(Key.ENTER);
        add(enter);
    }

    private static Input input(String type) {
        // Each keystroke, so that the last field counts when Enter is pressed in it.
        Input input = new Input(ValueChangeMode.EAGER);
        input.setType(type);
        return input;
    }

    private boolean named() {
        boolean named = !name.getValue().isBlank() && name.getValue().strip().length() <= 60;
        if (!named) {
            fault.setText(Text.of("staff.no-name"));
        }
        return named;
    }

    private void begin() {
        if (!named()) {
            return;
        }
        if (!HousePassword.takes(password.getValue())) {
            fault.setText(Text.of("staff.short", HousePassword.SHORTEST, HousePassword.LONGEST));
        } else if (!password.getValue().equals(again.getValue())) {
            fault.setText(Text.of("staff.differ"));
        } else {
            finish(account.begin(word.getValue(), password.getValue()), "staff.wrong-word");
        }
    }

    private void enter() {
        if (named()) {
            finish(account.enter(password.getValue()), "staff.wrong");
        }
    }

    private void finish(HousePassword.Entry entry, String wrong) {
        switch (entry) {
            case IN -> {
                Staff.signIn(name.getValue().strip());
                in.run();
            }
            case WRONG -> fault.setText(Text.of(wrong));
            case WAIT -> fault.setText(Text.of("staff.wait"));
        }
    }
}
