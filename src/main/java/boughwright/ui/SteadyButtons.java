package boughwright.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.dom.Element;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Buttons that outlive a drawing. A screen is drawn anew after each answer; a finger that is quicker than the answer touches a button of the old
 * drawing, and what it asked for would be lost with that button. Those that stand in the old drawing and in the new one are therefore the same
 * button, which does what the new one would.
 *
 * <p>Buttons are the same when they look and read alike. Where several in one drawing do, none of them is kept: it could be another's touch.
 */
final class SteadyButtons {

    /** What a button does when it is touched; another drawing may put another in its place. */
    private static final class Touch {

        private Runnable action;

        private Touch(Runnable action) {
            this.action = action;
        }
    }

    private final Map<String, NativeButton> before;

    private SteadyButtons(Map<String, NativeButton> before) {
        this.before = before;
    }

    /** Lets a touch do something, in a way that can be handed on to the next drawing. */
    static void touched(NativeButton button, Runnable action) {
        Touch touch = new Touch(action);
        ComponentUtil.setData(button, Touch.class, touch);
        button.addClickListener(e -> touch.action.run());
    }

    /** Remembers the buttons in this part of a screen, before it is drawn anew. */
    static SteadyButtons in(Component drawn) {
        return new SteadyButtons(found(drawn));
    }

    /** No button is remembered, as on a page that has become another one. */
    static SteadyButtons none() {
        return new SteadyButtons(Map.of());
    }

    /** Puts each button that was there before in the place of the one that was drawn for it. */
    void stayIn(Component drawnAnew) {
        found(drawnAnew).forEach((same, fresh) -> {
            NativeButton old = before.get(same);
            if (old != null && old != fresh) {
                takeOver(old, fresh);
            }
        });
    }

    private static void takeOver(NativeButton old, NativeButton fresh) {
        ComponentUtil.getData(old, Touch.class).action = ComponentUtil.getData(fresh, Touch.class).action;
        Element to = old.getElement();
        Element from = fresh.getElement();
        to.removeFromParent();
        to.getAttributeNames().filter(n -> !from.hasAttribute(n)).toList().forEach(to::removeAttribute);
        from.getAttributeNames().forEach(n -> to.setAttribute(n, from.getAttribute(n)));
        to.removeAllChildren();
        for (Element child : from.getChildren().toList()) {
            child.removeFromParent();
            to.appendChild(child);
        }
        old.setEnabled(from.isEnabled());
        old.setVisible(from.isVisible());
        Element parent = from.getParent();
        parent.setChild(parent.indexOfChild(from), to);
    }

    private static Map<String, NativeButton> found(Component part) {
        Map<String, NativeButton> found = new HashMap<>();
        Set<String> several = new HashSet<>();
        collect(part, found, several);
        found.keySet().removeAll(several);
        return found;
    }

    private static void collect(Component part, Map<String, NativeButton> found, Set<String> several) {
        if (part instanceof NativeButton button) {
            String name = name(button);
            if (ComponentUtil.getData(button, Touch.class) != null && found.put(name, button) != null) {
                several.add(name);
            }
            return;
        }
        part.getChildren().forEach(child -> collect(child, found, several));
    }

    private static String name(NativeButton button) {
        String label = button.getElement().getAttribute("aria-label");
        String kind = button.getClassNames().stream().findFirst().orElse("");
        return kind + " " + (label == null ? button.getElement().getTextRecursively() : label);
    }
}
