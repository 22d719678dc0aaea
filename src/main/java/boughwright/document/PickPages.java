package boughwright.document;

import boughwright.colour.ColourName;
import boughwright.kit.KitLine;
import boughwright.measure.Money;
import boughwright.proposal.PickList;
import boughwright.proposal.Proposal;
import boughwright.proposal.ShelfOrder;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.List;

/** What to fetch, shelf by shelf. A product that serves several needs stands once, with its uses below its name. */
final class PickPages {

    private final Html html;
    private final Proposal proposal;

    PickPages(Html html, Proposal proposal) {
        this.html = html;
        this.proposal = proposal;
    }

    void write() {
        html.in("h2", "part fresh", () -> html.with("id", "pick").text(Text.of("document.pick")));
        html.put("p", "lead", Text.of("document.pick.lead"));
        html.in("table", "pick", () -> {
            html.in("thead", "", () -> html.in("tr", "", () -> {
                head("tick", "document.pick.done");
                head("shelf", "document.pick.shelf");
                head("", "document.pick.product");
                head("quantity", "document.pick.quantity");
                head("packs", "document.pick.packs");
                head("money", "document.pick.each");
                head("money", "document.pick.price");
            }));
            html.in("tbody", "", this::rows);
        });
        html.in("div", "sum", () -> {
            html.put("span", "money", proposal.kit().total().show());
            html.put("span", "label", Text.of("document.pick.total"));
        });
    }

    private void head(String kind, String key) {
        html.put("th", kind, Text.of(key));
    }

    private void rows() {
        String aisle = null;
        for (List<KitLine> lines : PickList.byShelf(proposal)) {
            String next = ShelfOrder.aisle(lines.get(0).shelf());
            row(lines, aisle != null && !aisle.equals(next));
            aisle = next;
        }
    }

    private void row(List<KitLine> lines, boolean newAisle) {
        KitLine first = lines.get(0);
        int quantity = lines.stream().mapToInt(KitLine::quantity).sum();
        int packs = lines.stream().mapToInt(KitLine::packs).sum();
        Money price = lines.stream().map(KitLine::price).reduce(Money::plus).orElseThrow();
        html.in("tr", newAisle ? "aisle" : "", () -> {
            html.in("td", "tick", () -> html.put("div", "box", ""));
            html.put("td", "shelf", Wording.bound(first.shelf()));
            html.in("td", "", () -> {
                html.in("div", "name", () -> {
                    proposal.catalogue().product(first.sku()).ifPresent(p -> html.in("span", "dot", () ->
                            html.with("style", "background-color:" + p.colour().hex())));
                    html.text(first.name());
                });
                html.put("div", "uses", first.sku() + " · " + colour(first) + uses(lines));
            });
            html.put("td", "quantity", Wording.count(quantity, first.role()));
            html.put("td", "packs", first.packSize() == 1 ? String.valueOf(packs)
                    : Wording.bound(Text.of("document.pick.pack", String.valueOf(packs), String.valueOf(first.packSize()))));
            html.put("td", "money", first.unitPrice().show());
            html.put("td", "money strong", price.show());
        });
    }

    /** In words too, since a dot says little in a dim store room or to some eyes. */
    private String colour(KitLine line) {
        return proposal.catalogue().product(line.sku()).map(p -> ColourName.of(p.colour()).shown() + " · ").orElse("");
    }

    private static String uses(List<KitLine> lines) {
        List<String> uses = new ArrayList<>();
        for (KitLine line : lines) {
            String use = Text.of("role." + line.role().word());
            if (lines.size() > 1) {
                String layer = Text.within(Text.of("layer." + line.layer().word()));
                use = Text.of("document.pick.share", String.valueOf(line.quantity()), Text.of("document.pick.use", layer, use), line.price().show());
            }
            uses.add(line.owned() > 0 ? Text.of("document.pick.owned", use, String.valueOf(line.owned())) : use);
        }
        return String.join(" · ", uses);
    }
}
