package boughwright.ui;

import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.function.IntConsumer;

/** A number to type, with one less and one more beside it; never below 0. */
final class Stepper extends Div {

    /**
     * @param of what is counted, for screen readers
     * @param onChange called with the number wanted
     */
    Stepper(int value, String of, IntConsumer onChange) {
        addClassName("stepper");
        NativeButton less = new NativeButton("−", e -> onChange.accept(Math.max(0, value - 1)));
        less.getElement().setAttribute("aria-label", Text.of("stepper.less", of));
        less.setEnabled(value > 0);
        NativeButton more = new NativeButton("+", e -> onChange.accept(value + 1));
        more.getElement().setAttribute("aria-label", Text.of("stepper.more", of));
        Input number = new Input(ValueChangeMode.ON_CHANGE);
        number.setType("text");
        number.getElement().setAttribute("inputmode", "numeric");
        number.getElement().setAttribute("aria-label", Text.of("stepper.number", of));
        number.setValue(String.valueOf(value));
        number.addClassName("stepper-value");
        number.addValueChangeListener(e -> {
            if (e.isFromClient() && e.getValue().strip().matches("\\d{1,6}")) {
                onChange.accept(Integer.parseInt(e.getValue().strip()));
            } else if (e.isFromClient()) {
                number.setValue(String.valueOf(value));
            }
        });
        add(less, number, more);
    }
}
