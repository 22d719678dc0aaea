package boughwright.ui;

import boughwright.drawing.DressedTree;
import boughwright.kit.KitLine;
import boughwright.kit.Swap;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import java.util.function.Consumer;

/** Other products for a line, each with what it would do to price and score before it is taken. */
final class SwapCards extends Div {

    private static final int MOST_OFFERED = 6;

    /** @param change works a change out and shows what comes of it */
    SwapCards(Proposing proposing, KitLine line, Consumer<Runnable> change) {
        Div cards = new Div();
        cards.addClassNames("cards", "swaps");
        if (proposing.chosenByHand(line.slot())) {
            cards.add(Controls.card(null, Text.of("kit.swap.free"), Text.of("kit.swap.free.words"), false, () -> {
                change.accept(() -> proposing.letTheKitChoose(line.slot()));
            }));
        }
        List<Swap> swaps = proposing.swaps(line.slot(), MOST_OFFERED);
        swaps.forEach(swap -> cards.add(card(proposing, line.slot(), swap, words(proposing, swap), change)));
        add(cards);
        if (swaps.isEmpty()) {
            Paragraph none = new Paragraph(Text.of("kit.swap.none"));
            none.addClassName("soft");
            add(none);
        }
        add(Controls.link(Text.of("kit.leave-out", line.name()), () -> {
            change.accept(() -> proposing.leaveOut(line.slot(), line.sku()));
        }));
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
