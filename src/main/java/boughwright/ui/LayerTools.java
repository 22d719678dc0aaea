package boughwright.ui;

import boughwright.brief.Word;
import boughwright.catalogue.Traits;
import boughwright.measure.Money;
import boughwright.needs.Layer;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.Optional;
import java.util.function.Consumer;

/** What can be asked of a whole layer: a price level, the most it may cost, to be left out. */
final class LayerTools extends Div {

    private final Proposing proposing;
    private final Layer layer;
    private final Consumer<Runnable> change;
    private final Paragraph fault = new Paragraph();

    LayerTools(Proposing proposing, Layer layer, Consumer<Runnable> change) {
        this.proposing = proposing;
        this.layer = layer;
        this.change = change;
        addClassName("layer-tools");
        fault.addClassName("fault");
        fault.getElement().setAttribute("role", "alert");
        if (layer != Layer.ACCENTS) {
            add(levels(), cap(), fault);
        }
        add(Controls.button(Text.of("layer.drop", Text.of("layer." + layer.word())), "quiet", () -> change.accept(() -> proposing.drop(layer, true))));
    }

    /** The way back for a layer that was left out. */
    static Div dropped(Proposing proposing, Layer layer, Consumer<Runnable> change) {
        Paragraph words = new Paragraph(Text.of("layer.dropped"));
        words.addClassName("soft");
        return new Div(words, Controls.button(Text.of("layer.back", Text.of("layer." + layer.word())), "quiet", () -> {
            change.accept(() -> proposing.drop(layer, false));
        }));
    }

    private Div levels() {
        Div row = new Div(Controls.words(Text.of("layer.level"), "soft"));
        row.addClassName("choice-row");
        Optional<String> now = Optional.ofNullable(proposing.hand().levels().get(layer));
        row.add(Controls.pill(Text.of("level.any"), now.isEmpty(), () -> change.accept(() -> proposing.level(layer, Optional.empty()))));
        for (String level : Word.words(Traits.Level.class)) {
            row.add(Controls.pill(Text.of("level." + level), now.equals(Optional.of(level)), () -> change.accept(() -> proposing.level(layer, Optional.of(level)))));
        }
        return row;
    }

    private Div cap() {
        String now = Optional.ofNullable(proposing.hand().caps().get(layer)).map(Money::decimal).orElse("");
        return Controls.field("cap-" + layer.word(), Text.of("layer.cap", proposing.designer().rulebook().choices().currency().getCurrencyCode()), "", now,
                this::cap);
    }

    private void cap(String typed) {
        Optional<Money> most = Money.read(Amounts.plain(typed), proposing.designer().rulebook().choices().currency());
        if (most.isEmpty() && !typed.isBlank()) {
            fault.setText(Text.of("budget.plain"));
        } else {
            change.accept(() -> proposing.cap(layer, most));
        }
    }
}
