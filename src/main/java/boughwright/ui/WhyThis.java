package boughwright.ui;

import boughwright.kit.Kit;
import boughwright.kit.KitLine;
import boughwright.kit.Swap;
import boughwright.kit.Term;
import boughwright.kit.TermScore;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;

/** Why this product and no other: the whole scheme's score with it and with each of the best others, term by term. */
final class WhyThis extends Div {

    private static final int OTHERS = 3;

    WhyThis(Proposing proposing, KitLine line) {
        addClassName("why-this");
        Kit kit = proposing.proposal().orElseThrow().kit();
        List<Swap> others = proposing.swaps(line.slot(), OTHERS).stream().filter(Swap::possible).toList();
        if (others.isEmpty()) {
            add(new Paragraph(Text.of("why.alone")));
            return;
        }
        boolean best = others.stream().allMatch(o -> o.points() <= 1e-9);
        add(new Paragraph(Text.of(proposing.chosenByHand(line.slot()) ? "why.chosen" : best ? "why.best" : "why.kept", Amounts.points(others.get(0).points()))));
        NativeTable table = new NativeTable();
        NativeTableRow head = new NativeTableRow();
        head.add(new NativeTableHeaderCell(Text.of("why.term")), new NativeTableHeaderCell(line.name()));
        others.forEach(o -> head.add(new NativeTableHeaderCell(o.product().name())));
        table.add(head);
        for (TermScore term : kit.terms()) {
            if (others.stream().anyMatch(o -> gain(o, term.term()) != 0)) {
                row(table, Text.of("term." + term.term().word()), term.term().sentence(term.value()), Amounts.plainPoints(term.points()),
                        others.stream().map(o -> Amounts.plainPoints(term.points() + gain(o, term.term()))).toList());
            }
        }
        row(table, Text.of("why.whole"), "", Amounts.plainPoints(kit.score()), others.stream().map(o -> Amounts.plainPoints(kit.score() + o.points())).toList());
        row(table, Text.of("why.price"), "", kit.total().show(), others.stream()
                .map(o -> Amounts.change(o.coins(), kit.total().currency())).toList());
        add(table);
    }

    private static double gain(Swap other, Term term) {
        return other.terms().stream().filter(t -> t.term() == term).mapToDouble(TermScore::points).sum();
    }

    private static void row(NativeTable table, String term, String says, String here, List<String> others) {
        NativeTableRow row = new NativeTableRow();
        NativeTableHeaderCell name = new NativeTableHeaderCell(term);
        name.getElement().setAttribute("scope", "row");
        if (!says.isEmpty()) {
            name.add(Controls.words(says, "soft"));
        }
        row.add(name, new NativeTableCell(here));
        others.forEach(o -> row.add(new NativeTableCell(o)));
        table.add(row);
    }
}
