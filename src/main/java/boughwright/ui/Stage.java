package boughwright.ui;

import boughwright.drawing.ProposalPicture;
import boughwright.drawing.View;
import boughwright.needs.Layer;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The drawing of the dressed tree with its layers to switch and its sides to choose. */
final class Stage extends Div {

    private final Set<Layer> hidden = EnumSet.noneOf(Layer.class);
    private final Div picture = new Div();
    private final Div layers = new Div();
    private final Div views = new Div();
    private View view = View.FRONT;
    private boolean evening;
    private ProposalPicture pictures;

    Stage() {
        addClassName("stage-box");
        picture.addClassName("picture");
        layers.addClassName("layers");
        layers.getElement().setAttribute("role", "group");
        layers.getElement().setAttribute("aria-label", Text.of("stage.layers"));
        views.addClassName("views");
        views.getElement().setAttribute("role", "group");
        views.getElement().setAttribute("aria-label", Text.of("stage.views"));
        add(layers, picture, views);
    }

    /** Draws another proposal from the side that was chosen before, with the same layers. */
    void show(Proposal proposal) {
        pictures = new ProposalPicture(proposal.brief(), proposal.kit(), proposal.layout(), proposal.catalogue());
        draw();
    }

    private void draw() {
        picture.getElement().setProperty("innerHTML", pictures.onScreen(view, evening));
        setClassName("dusk", evening);
        layers.removeAll();
        for (Layer layer : Layer.values()) {
            NativeButton button = Controls.pill(Text.of("layer." + layer.word()), !hidden.contains(layer), () -> toggle(layer));
            button.addClassName("layer-" + layer.word());
            layers.add(button);
        }
        views.removeAll();
        for (View each : View.values()) {
            views.add(Controls.pill(Text.of("stage.view." + each.name().toLowerCase(Locale.ROOT)), each == view, () -> {
                view = each;
                draw();
            }));
        }
        views.add(Controls.pill(Text.of("stage.evening"), evening, () -> {
            evening = !evening;
            draw();
        }));
        hide();
    }

    private void toggle(Layer layer) {
        if (!hidden.remove(layer)) {
            hidden.add(layer);
        }
        layers.getChildren().filter(c -> c.hasClassName("layer-" + layer.word()))
                .forEach(c -> Controls.pressed((NativeButton) c, !hidden.contains(layer)));
        hide();
    }

    private void hide() {
        picture.getElement().setAttribute("data-hide", hidden.stream().map(Layer::word).collect(Collectors.joining(" ")));
    }
}
