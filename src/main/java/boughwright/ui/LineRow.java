package boughwright.ui;

import boughwright.catalogue.Product;
import boughwright.drawing.DressedTree;
import boughwright.kit.KitLine;
import boughwright.kit.OwnFirst;
import boughwright.needs.Need;
import boughwright.needs.Unit;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** One line of the kit: the product, how many and why, and others that could take its place. */
final class LineRow extends Div {

    private final Proposing proposing;
    private final Need need;
    private final KitLine line;
    private final Consumer<Runnable> change;
    private final Div more = new Div();
    private final Map<String, NativeButton> links = new HashMap<>();
    private String open = "";

    LineRow(Proposing proposing, Need need, KitLine line, Proposal proposal, Consumer<Runnable> change) {
        this.proposing = proposing;
        this.need = need;
        this.line = line;
        this.change = change;
        addClassName("line-box");
        getElement().setAttribute("data-need", need.id());
        Product product = proposal.product(line);
        Div swatch = Controls.drawn(DressedTree.swatch(product, 44));
        swatch.addClassName("swatch");
        Div name = new Div(Controls.words(line.name(), "line-name"), Controls.words(details(), "soft"));
        name.addClassName("line-words");
        // How many of one's own there are is a fact; the rest can be changed.
        Div count = new Div(own() ? Controls.words(String.valueOf(line.quantity()), "line-price")
                : new Stepper(line.quantity(), line.name(), to -> change.accept(() -> proposing.quantity(need.id(), to))), Controls.words(unit(), "soft"));
        count.addClassName("line-count");
        Div price = new Div(Controls.words(line.price().show(), "line-price"), Controls.words(KitList.packs(line), "soft"));
        price.addClassName("line-money");
        Div linked = new Div(link(Text.of("kit.why", line.quantity()), "why"));
        if (!own()) {
            boolean pinned = proposing.chosenByHand(line.slot());
            linked.add(link(Text.of("kit.why-this"), "this"), link(Text.of("kit.swap"), "swap"), Controls.link(Text.of(pinned ? "kit.unpin" : "kit.pin"),
                    () -> change.accept(() -> {
                        if (pinned) {
                            proposing.letTheKitChoose(line.slot());
                        } else {
                            proposing.pin(line.slot());
                        }
                    })));
        }
        linked.addClassName("line-links");
        Div row = new Div(swatch, name, count, price, linked);
        row.addClassName("line");
        more.addClassName("line-more");
        more.setVisible(false);
        add(row, more);
    }

    private NativeButton link(String text, String opens) {
        NativeButton link = Controls.link(text, () -> toggle(opens));
        link.getElement().setAttribute("aria-expanded", "false");
        links.put(opens, link);
        return link;
    }

    /** Filled with what the customer has; there is nothing to choose. */
    private boolean own() {
        return line.slot().endsWith(OwnFirst.OWN);
    }

    private String details() {
        List<String> parts = new ArrayList<>();
        parts.add(Text.of("role." + line.role().word()));
        if (line.packs() > 0) {
            parts.add(Text.of("kit.shelf", line.shelf()));
        }
        if (line.owned() > 0) {
            parts.add(Text.of("kit.owned", line.owned()));
        }
        if (need.changed()) {
            parts.add(Text.of("kit.by-hand"));
        }
        if (proposing.chosenByHand(line.slot())) {
            parts.add(Text.of("kit.chosen"));
        }
        return String.join(" · ", parts);
    }

    private String unit() {
        return Text.of("unit." + (need.unit() == Unit.BULB ? "string" : need.unit().word()), line.quantity());
    }

    private void toggle(String which) {
        open = open.equals(which) ? "" : which;
        more.removeAll();
        more.setVisible(!open.isEmpty());
        switch (open) {
            case "why" -> more.add(new ReasonBox(proposing, need, change));
            case "this" -> more.add(new WhyThis(proposing, line));
            case "swap" -> more.add(new SwapCards(proposing, line, change));
            default -> {
            }
        }
        links.forEach((opens, link) -> link.getElement().setAttribute("aria-expanded", String.valueOf(opens.equals(open))));
        getElement().setAttribute("data-open", open);
    }
}
