package boughwright.ui;

import boughwright.colour.Lab;
import boughwright.colour.Match;
import boughwright.drawing.DressedTree;
import boughwright.kit.KitLine;
import boughwright.kit.OwnFirst;
import boughwright.kit.Swap;
import boughwright.palette.Pair;
import boughwright.palette.PaletteWords;
import boughwright.palette.Tone;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Two products that nearly match: both drawn, the sentence, and for either others that match it better or keep further away. */
final class NearMissCard extends Div {

    /** Looked at for each side of the choice, and shown. */
    private static final int LOOKED_AT = 24;
    private static final int SHOWN = 2;

    private final Proposing proposing;
    private final Consumer<Runnable> change;
    private final Div more = new Div();
    private final List<NativeButton> links = new ArrayList<>();
    private String open = "";

    /** @param change works a change out and shows what comes of it */
    NearMissCard(Proposing proposing, Proposal proposal, Pair pair, Consumer<Runnable> change) {
        this.proposing = proposing;
        this.change = change;
        addClassName("near-miss");
        Div words = new Div(new Paragraph(PaletteWords.nearMiss(pair)));
        Div linked = new Div();
        linked.addClassName("line-links");
        offer(linked, pair.one(), pair.other());
        offer(linked, pair.other(), pair.one());
        words.add(linked);
        Div row = new Div(swatch(proposal, pair.one()), swatch(proposal, pair.other()), words);
        row.addClassName("near-miss-row");
        more.addClassName("line-more");
        more.setVisible(false);
        add(row, more);
    }

    private static Div swatch(Proposal proposal, Tone tone) {
        KitLine line = proposal.kit().lines().stream().filter(l -> l.slot().equals(tone.id())).findFirst().orElseThrow();
        Div swatch = Controls.drawn(DressedTree.swatch(proposal.product(line), 64));
        swatch.addClassNames("swatch", "large");
        return swatch;
    }

    /** What the customer brings stays. */
    private void offer(Div linked, Tone tone, Tone other) {
        if (tone.id().endsWith(OwnFirst.OWN)) {
            return;
        }
        NativeButton link = Controls.link(Text.of("colours.instead", tone.shortName().equals(other.shortName()) ? tone.name() : tone.shortName()), () -> toggle(tone, other));
        link.getElement().setAttribute("aria-expanded", "false");
        link.getElement().setAttribute("data-slot", tone.id());
        links.add(link);
        linked.add(link);
    }

    private void toggle(Tone tone, Tone other) {
        open = open.equals(tone.id()) ? "" : tone.id();
        links.forEach(l -> l.getElement().setAttribute("aria-expanded", String.valueOf(l.getElement().getAttribute("data-slot").equals(open))));
        more.removeAll();
        more.setVisible(!open.isEmpty());
        if (open.isEmpty()) {
            return;
        }
        Div cards = new Div();
        cards.addClassNames("cards", "swaps");
        List<Swap> swaps = proposing.swaps(tone.id(), LOOKED_AT).stream().filter(Swap::possible).toList();
        cards(cards, tone, other, swaps, Match.ALIKE);
        cards(cards, tone, other, swaps, Match.APART);
        if (cards.getChildren().findAny().isEmpty()) {
            Paragraph none = new Paragraph(Text.of("colours.instead.none"));
            none.addClassName("soft");
            more.add(none);
        }
        more.add(cards);
    }

    /** The best for the whole scheme among those that lie so to the other product. */
    private void cards(Div cards, Tone tone, Tone other, List<Swap> swaps, Match wanted) {
        swaps.stream().filter(s -> Match.of(difference(s, other)) == wanted).limit(SHOWN).forEach(s -> cards.add(SwapCards.card(proposing, tone.id(), s,
                Text.of(wanted == Match.ALIKE ? "colours.closer" : "colours.further", PaletteWords.tenths(difference(s, other))) + " " + SwapCards.words(proposing, s),
                change)));
    }

    private static double difference(Swap swap, Tone other) {
        return swap.product().lab().difference(Lab.of(other.colour()));
    }
}
