package boughwright.ui;

import boughwright.catalogue.Product;
import boughwright.drawing.DressedTree;
import boughwright.kit.KitLine;
import boughwright.needs.Need;
import boughwright.needs.Unit;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import java.util.ArrayList;
import java.util.List;

/** One line of the kit: the product, how many and why, and others that could take its place. */
final class LineRow extends Div {

    private static final int MOST_OFFERED = 6;

    private final Proposing proposing;
    private final Need need;
    private final KitLine line;
    private final Runnable changed;
    private final Div more = new Div();
    private String open = "";

    LineRow(Proposing proposing, Need need, KitLine line, Proposal proposal, Runnable changed) {
        this.proposing = proposing;
        this.need = need;
        this.line = line;
        this.changed = changed;
        addClassName("line-box");
        getElement().setAttribute("data-need", need.id());
        Product product = proposing.designer().catalogue().product(line.sku()).orElseThrow();
        Div swatch = Controls.drawn(DressedTree.swatch(product, 44));
        swatch.addClassName("swatch");
        Div name = new Div(Controls.words(line.name(), "line-name"), Controls.words(details(), "soft"));
        name.addClassName("line-words");
        Stepper stepper = new Stepper(line.quantity(), line.name(), to -> change(() -> proposing.quantity(need.id(), to)));
        Div count = new Div(stepper, Controls.words(unit(), "soft"));
        count.addClassName("line-count");
        Div price = new Div(Controls.words(line.price().show(), "line-price"), Controls.words(KitList.packs(line), "soft"));
        price.addClassName("line-money");
        NativeButton why = Controls.link(Text.of("kit.why", line.quantity()), () -> toggle("why"));
        NativeButton swap = Controls.link(Text.of("kit.swap"), () -> toggle("swap"));
        why.getElement().setAttribute("aria-expanded", "false");
        swap.getElement().setAttribute("aria-expanded", "false");
        Div links = new Div(why, swap);
        links.addClassName("line-links");
        Div row = new Div(swatch, name, count, price, links);
        row.addClassName("line");
        more.addClassName("line-more");
        more.setVisible(false);
        add(row, more);
    }

    private String details() {
        List<String> parts = new ArrayList<>();
        parts.add(Text.of("role." + line.role().word()));
        parts.add(Text.of("kit.shelf", line.shelf()));
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

    private void change(Runnable change) {
        change.run();
        changed.run();
    }

    private void toggle(String which) {
        open = open.equals(which) ? "" : which;
        more.removeAll();
        more.setVisible(!open.isEmpty());
        if (open.equals("why")) {
            more.add(new ReasonBox(proposing, need, changed));
        } else if (open.equals("swap")) {
            more.add(swaps());
        }
        getElement().setAttribute("data-open", open);
    }

    private Div swaps() {
        Div swaps = new Div();
        swaps.addClassNames("cards", "swaps");
        if (proposing.chosenByHand(line.slot())) {
            swaps.add(Controls.card(null, Text.of("kit.swap.free"), Text.of("kit.swap.free.words"), false,
                    () -> change(() -> proposing.letTheKitChoose(line.slot()))));
        }
        List<Product> others = proposing.alternatives(line.slot());
        for (Product other : others.subList(0, Math.min(MOST_OFFERED, others.size()))) {
            Div swatch = Controls.drawn(DressedTree.swatch(other, 56));
            swatch.addClassName("swatch");
            swaps.add(Controls.card(swatch, other.name(), Text.of("kit.swap.price", other.price().show(), other.pack(), other.shelf()), false,
                    () -> change(() -> proposing.swap(line.slot(), other.sku()))));
        }
        if (others.isEmpty()) {
            Paragraph none = new Paragraph(Text.of("kit.swap.none"));
            none.addClassName("soft");
            swaps.add(none);
        }
        return swaps;
    }
}
