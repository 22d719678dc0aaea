package boughwright.ui;

import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.function.IntConsumer;

/** A number to type, with one less and one more beside it; never below 0. */
final class Stepper extends Div {

    private static final int QUIET_MILLIS = 350;

    /**
     * @param of what is counted, for screen readers
     * @param onChange called with the number wanted
     */
    Stepper(int value, String of, IntConsumer onChange) {
        addClassName("stepper");
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
        add(button("−", -1, Text.of("stepper.less", of)), number, button("+", 1, Text.of("stepper.more", of)));
    }

    /** Taps in quick succession are counted in the browser and come as one change of the number. */
    private static NativeButton button(String sign, int by, String label) {
        NativeButton button = new NativeButton(sign);
        button.getElement().setAttribute("aria-label", label);
        button.getElement().executeJs("""
                this.addEventListener('click', () => {
                  const box = this.parentElement;
                  const number = box.querySelector('input');
                  number.value = Math.max(0, (parseInt(number.value, 10) || 0) + $0);
                  clearTimeout(box.settling);
                  box.settling = setTimeout(() => number.dispatchEvent(new Event('change', {bubbles: true})), $1);
                });""", by, QUIET_MILLIS);
        return button;
    }
}
