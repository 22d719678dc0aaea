package boughwright.ui;

import boughwright.colour.ColourName;
import boughwright.colour.Srgb;
import boughwright.drawing.DressedTree;
import boughwright.kit.KitLine;
import boughwright.kit.Swap;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/** Other products for a line, each with what it would do to price and score before it is taken. */
final class SwapCards extends Div {

    private static final int MOST_OFFERED = 6;

    private final Proposing proposing;
    private final KitLine line;
    private final Consumer<Runnable> change;
    private final Div cards = new Div();
    private final NativeButton best;
    private final NativeButton nearest;
    private final Input near = new Input(ValueChangeMode.ON_CHANGE);

    /** @param change works a change out and shows what comes of it */
    SwapCards(Proposing proposing, KitLine line, Consumer<Runnable> change) {
        this.proposing = proposing;
        this.line = line;
        this.change = change;
        this.best = Controls.pill(Text.of("kit.swap.best"), true, this::showBest);
        this.nearest = Controls.pill(Text.of("kit.swap.nearest"), false, this::showNear);
        cards.addClassNames("cards", "swaps");
        add(order(), cards, Controls.link(Text.of("kit.leave-out", line.name()), () -> change.accept(() -> proposing.leaveOut(line.slot(), line.sku()))));
        showBest();
    }

    /** What is best for the scheme first, or what is nearest to a colour; to begin with to that of the product that stands there. */
    private Div order() {
        near.setType("color");
        near.setId("near-" + line.slot().replaceAll("[^A-Za-z0-9]", "-"));
        near.setValue(proposing.proposal().flatMap(p -> p.catalogue().product(line.sku())).map(p -> p.colour().hex()).orElse("#ffffff"));
        near.addValueChangeListener(e -> {
            if (e.isFromClient()) {
                showNear();
            }
        });
        NativeLabel label = new NativeLabel(Text.of("kit.swap.near"));
        label.setFor(near);
        Div colour = new Div(near, label);
        colour.addClassName("near");
        Div row = new Div(best, nearest, colour);
        row.addClassNames("choice-row", "swap-order");
        return row;
    }

    private void showBest() {
        Controls.pressed(best, true);
        Controls.pressed(nearest, false);
        show(proposing.swaps(line.slot(), MOST_OFFERED), swap -> words(proposing, swap));
    }

    private void showNear() {
        Controls.pressed(best, false);
        Controls.pressed(nearest, true);
        Srgb colour = Srgb.read(near.getValue()).orElseThrow();
        show(proposing.swapsNear(line.slot(), colour, MOST_OFFERED), swap -> Text.of("kit.swap.shade", ColourName.of(swap.product().colour()).shown(),
                words(proposing, swap)));
    }

    private void show(List<Swap> swaps, Function<Swap, String> words) {
        cards.removeAll();
        if (proposing.chosenByHand(line.slot())) {
            cards.add(Controls.card(null, Text.of("kit.swap.free"), Text.of("kit.swap.free.words"), false,
                    () -> change.accept(() -> proposing.letTheKitChoose(line.slot()))));
        }
        swaps.forEach(swap -> cards.add(card(proposing, line.slot(), swap, words.apply(swap), change)));
        if (swaps.isEmpty()) {
            cards.add(Controls.words(Text.of("kit.swap.none"), "soft"));
        }
    }

    /** One product to take instead, with what is to be said of it. */
    static NativeButton card(Proposing proposing, String slot, Swap swap, String words, Consumer<Runnable> change) {
        String sku = swap.nearest().map(n -> n.sku()).orElse(swap.product().sku());
        Div swatch = Controls.drawn(DressedTree.swatch(swap.product(), 56));
        swatch.addClassName("swatch");
        NativeButton card = Controls.card(swatch, swap.product().name(), words, false, () -> {
            change.accept(() -> proposing.swap(slot, sku));
        });
        card.setEnabled(swap.possible() || swap.nearest().isPresent());
        return card;
    }

    /** What taking it would do to price and points. */
    static String words(Proposing proposing, Swap swap) {
        if (swap.missing() > 0) {
            return swap.nearest().map(n -> Text.of("kit.swap.short", swap.missing(), n.name())).orElse(Text.of("kit.swap.short.none", swap.missing()));
        }
        if (!swap.possible()) {
            return Text.of("kit.swap.impossible");
        }
        String words = Text.of("kit.swap.change", Amounts.change(swap.coins(), proposing.designer().rulebook().choices().currency()),
                Amounts.points(swap.points()));
        words += " " + Text.of("kit.swap.price", swap.product().price().show(), swap.product().pack(), swap.product().shelf());
        return swap.alsoChanged().isEmpty() ? words : words + " " + Text.of("kit.swap.also", swap.alsoChanged().size());
    }
}
