package boughwright.ui;

import boughwright.drawing.ProposalPicture;
import boughwright.drawing.View;
import boughwright.layout.Side;
import boughwright.needs.Layer;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.dom.DomEvent;
import elemental.json.JsonType;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The drawing of the dressed tree with its layers to switch, its sides to choose, and its pieces to touch, to move and to turn. */
final class Stage extends Div {

    /** What the drawing asks of the page that it stands on. */
    interface Hand {
        /** @param right metres to the right of a viewer on that side, {@code up} metres */
        void shift(String id, Side viewer, double right, double up);

        void back(String id);

        void allBack();
    }

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<String> TURN_WORDS = List.of("label", "hint", "picked", "cleared");

    private final Set<Layer> hidden = EnumSet.noneOf(Layer.class);
    private final Div picture = new Div();
    private final Div layers = new Div();
    private final Div views = new Div();
    private final Div modes = new Div();
    private final Paragraph split = new Paragraph();
    private final Div badge = new Div();
    private final PieceCard card;
    private Preview preview = Preview.AS_IT_IS;
    private Runnable onPreview = () -> { };
    private View view = View.FRONT;
    private boolean turning;
    private boolean evening;
    private boolean moving;
    private Proposal proposal;
    private Proposal drawn;
    private View drawnFrom;
    private boolean drawnInTheEvening;
    private String code;
    private ProposalPicture pictures;

    Stage(Hand hand) {
        addClassName("stage-box");
        picture.addClassName("picture");
        layers.addClassName("layers");
        group(layers, "stage.layers");
        views.addClassName("views");
        group(views, "stage.views");
        modes.addClassName("modes");
        split.addClassName("split");
        card = new PieceCard(hand, this::side, this::picked);
        picture.getElement().addEventListener("piece-picked", e -> card.show(text(e, "event.detail.id"))).addEventData("event.detail.id");
        picture.getElement().addEventListener("piece-moved", e -> hand.shift(text(e, "event.detail.id"), side(), number(e, "event.detail.right"),
                        number(e, "event.detail.up"))).addEventData("event.detail.id").addEventData("event.detail.right").addEventData("event.detail.up");
        picture.getElement().addEventListener("turn-unavailable", e -> cannotTurn());
        Div switches = new Div(layers, modes);
        switches.addClassName("switches");
        badge.addClassName("badge");
        badge.setVisible(false);
        Div filters = Controls.drawn(Preview.filters());
        filters.addClassName("filters");
        add(filters, switches, badge, picture, card, split, views);
    }

    Preview preview() {
        return preview;
    }

    /** Shows the drawing as others see it, flat or turning; nothing is drawn anew. A badge says so as long as it lasts. */
    void look(Preview other) {
        for (Preview each : Preview.values()) {
            setClassName(each.className(), each == other && each != Preview.AS_IT_IS);
        }
        preview = other;
        badge.removeAll();
        badge.setVisible(other != Preview.AS_IT_IS);
        badge.add(Controls.words(other.title(), "badge-words"), Controls.link(Preview.AS_IT_IS.button(), () -> {
            look(Preview.AS_IT_IS);
            onPreview.run();
        }));
    }

    /** @param told whenever the badge ends a preview */
    void onPreview(Runnable told) {
        onPreview = told;
    }

    private static void group(Div group, String label) {
        group.getElement().setAttribute("role", "group");
        group.getElement().setAttribute("aria-label", Text.of(label));
    }

    private static String text(DomEvent event, String name) {
        return event.getEventData().hasKey(name) && event.getEventData().get(name).getType() == JsonType.STRING
                ? event.getEventData().getString(name) : "";
    }

    private static double number(DomEvent event, String name) {
        return event.getEventData().getNumber(name);
    }

    /** Draws another proposal from the side that was chosen before, with the same layers. */
    void show(Proposal other, String consultation) {
        proposal = other;
        code = consultation;
        pictures = new ProposalPicture(other.brief(), other.kit(), other.layout(), other.catalogue());
        card.of(other, moving);
        draw();
    }

    /** The side from which things can be moved; from above and in the round they cannot. */
    private Side side() {
        return switch (view) {
            case FRONT, ABOVE -> Side.FRONT;
            case LEFT -> Side.LEFT;
            case RIGHT -> Side.RIGHT;
            case BACK -> Side.BACK;
        };
    }

    private void draw() {
        picture.getElement().executeJs("window.boughwright?.still(this)");
        if (turning) {
            drawn = null;
            picture.getElement().executeJs("window.boughwright.turn(this, $0, $1, $2, $3)", "api/proposals/" + code + "/scene.json?" + Addresses.told(proposal.brief().units()), turnWords(), evening,
                    hiddenWords());
        } else if (drawn != proposal || drawnFrom != view || drawnInTheEvening != evening) {
            // It weighs more than all the rest of the screen, which is drawn anew far more often.
            drawn = proposal;
            drawnFrom = view;
            drawnInTheEvening = evening;
            picture.getElement().setProperty("innerHTML", pictures.onScreen(view, evening));
        }
        picture.getElement().setAttribute("data-movable", moving && !turning && view != View.ABOVE);
        setClassName("dusk", evening);
        setClassName("turning", turning);
        layers.removeAll();
        for (Layer layer : Layer.values()) {
            NativeButton button = Controls.pill(Text.of("layer." + layer.word()), !hidden.contains(layer), () -> toggle(layer));
            button.addClassName("layer-" + layer.word());
            layers.add(button);
        }
        views.removeAll();
        for (View each : View.values()) {
            views.add(Controls.pill(Text.of("stage.view." + each.name().toLowerCase(Locale.ROOT)), !turning && each == view, () -> look(each, false)));
        }
        views.add(Controls.pill(Text.of("stage.turn"), turning, () -> look(view, true)));
        modes.removeAll();
        modes.add(Controls.pill(Text.of("stage.evening"), evening, () -> {
            evening = !evening;
            draw();
        }));
        modes.add(Controls.pill(Text.of("stage.move"), moving, this::move));
        split.setText(split());
        hide();
        clashes();
        picked(card.picked());
    }

    /** Marks what clashes where it was put. */
    private void clashes() {
        String ids = proposal.layout().clashes().stream().flatMap(c -> Stream.of(c.id(), c.other())).distinct().collect(Collectors.joining(" "));
        picture.getElement().executeJs("window.boughwright?.clash(this, $0)", ids);
    }

    private void look(View from, boolean round) {
        view = from;
        turning = round;
        moving &= !round && from != View.ABOVE;
        card.of(proposal, moving);
        draw();
    }

    private void move() {
        moving = !moving;
        if (moving) {
            turning = false;
            view = view == View.ABOVE ? View.FRONT : view;
        }
        card.of(proposal, moving);
        draw();
    }

    private void cannotTurn() {
        turning = false;
        draw();
        card.say(Text.of("stage.turn.cannot"));
    }

    private String turnWords() {
        ObjectNode words = JSON.createObjectNode();
        TURN_WORDS.forEach(w -> words.put(w, Text.of("turn." + w, "{title}", "{where}")));
        return words.toString();
    }

    /** How the pieces are shared out among the sides of the tree. */
    private String split() {
        Map<Side, Double> sides = proposal.layout().measures().sides();
        List<String> shares = new ArrayList<>();
        for (Side side : Side.values()) {
            long percent = Math.round(100 * sides.getOrDefault(side, 0.0));
            if (percent > 0) {
                shares.add(Text.of("stage.split." + side.word(), String.valueOf(percent)));
            }
        }
        return shares.isEmpty() ? "" : Text.of("stage.split", String.join(" · ", shares));
    }

    private void picked(String id) {
        picture.getElement().executeJs("window.boughwright?.pick(this, $0)", id);
    }

    private void toggle(Layer layer) {
        if (!hidden.remove(layer)) {
            hidden.add(layer);
        }
        layers.getChildren().filter(c -> c.hasClassName("layer-" + layer.word()))
                .forEach(c -> Controls.pressed((NativeButton) c, !hidden.contains(layer)));
        hide();
    }

    private String hiddenWords() {
        return hidden.stream().map(Layer::word).collect(Collectors.joining(" "));
    }

    private void hide() {
        picture.getElement().setAttribute("data-hide", hiddenWords());
        picture.getElement().executeJs("window.boughwright?.hide(this, $0)", hiddenWords());
    }
}
