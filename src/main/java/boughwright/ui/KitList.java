package boughwright.ui;

import boughwright.kit.KitLine;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import java.util.function.Consumer;

/** The kit by layer, each line with its quantity, packs, price, shelf and reason, to be changed in place. */
final class KitList extends Div {

    /** @param change works a change out and shows what comes of it */
    KitList(Proposing proposing, Proposal proposal, Consumer<Runnable> change) {
        addClassName("kit-list");
        for (Layer layer : Layer.values()) {
            List<Need> needs = proposal.needs().needs().stream().filter(n -> n.layer() == layer).toList();
            Section section = new Section();
            section.addClassName("layer");
            H2 heading = new H2(Text.of("layer." + layer.word()));
            Div head = new Div(heading, Controls.words(Text.of("layer." + layer.word() + ".words"), "soft"));
            head.addClassName("layer-head");
            section.add(head);
            if (proposing.hand().dropped().contains(layer)) {
                section.add(LayerTools.dropped(proposing, layer, change));
                add(section);
                continue;
            }
            Div tools = new Div();
            tools.setVisible(false);
            head.add(Controls.link(Text.of("layer.change"), () -> {
                tools.removeAll();
                tools.setVisible(!tools.isVisible());
                tools.add(new LayerTools(proposing, layer, change));
            }));
            section.add(tools);
            boolean any = false;
            for (Need need : needs) {
                var line = proposal.kit().line(need.id());
                if (line.isPresent()) {
                    section.add(new LineRow(proposing, need, line.get(), proposal, change));
                    any = true;
                } else if (!need.role().bought() || need.changed()) {
                    section.add(new MadeRow(proposing, need, proposal, change));
                    any = true;
                } else if (needs.size() == 1) {
                    Paragraph none = new Paragraph(need.reason().text());
                    none.addClassName("soft");
                    section.add(none);
                    any = true;
                }
            }
            if (any) {
                add(section);
            }
        }
    }

    /** Where the packs of a line are counted: with it, or with the line of the same product before it. */
    static String packs(KitLine line) {
        if (line.packs() == 0) {
            return line.owned() >= line.quantity() ? Text.of("kit.packs.owned") : Text.of("kit.packs.shared");
        }
        return line.packSize() == 1 ? "" : Text.of("kit.packs", line.packs(), line.packSize());
    }
}
