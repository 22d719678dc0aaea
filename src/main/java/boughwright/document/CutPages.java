package boughwright.document;

import boughwright.catalogue.Product;
import boughwright.kit.KitLine;
import boughwright.layout.RollCuts;
import boughwright.measure.Units;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How each roll of ribbon is cut, what each cut is for and what is left. */
final class CutPages {

    private final Html html;
    private final Proposal proposal;
    private final Units units;

    CutPages(Html html, Proposal proposal) {
        this.html = html;
        this.proposal = proposal;
        this.units = proposal.brief().units();
    }

    void write() {
        Map<String, List<RollCuts>> bySku = new LinkedHashMap<>();
        proposal.layout().cutList().forEach(r -> bySku.computeIfAbsent(r.sku(), sku -> new ArrayList<>()).add(r));
        if (bySku.isEmpty()) {
            return;
        }
        html.in("h2", "part fresh", () -> html.with("id", "cut").text(Text.of("document.cut")));
        html.put("p", "lead", Text.of("document.cut.lead"));
        html.in("table", "cut", () -> {
            html.in("thead", "", () -> html.in("tr", "", () -> {
                html.put("th", "tick", Text.of("document.pick.done"));
                html.put("th", "roll", Text.of("document.cut.roll"));
                html.put("th", "", Text.of("document.cut.cuts"));
                html.put("th", "left", Text.of("document.cut.left"));
            }));
            html.in("tbody", "", () -> bySku.forEach(this::ribbon));
        });
    }

    private void ribbon(String sku, List<RollCuts> rolls) {
        // The name stays with its first roll, so that it never stands alone at the foot of a page.
        boolean[] first = {true};
        for (RollCuts roll : rolls) {
            html.in("tr", first[0] ? "aisle" : "", () -> {
                html.in("td", "tick", () -> html.put("div", "box", ""));
                html.put("td", "roll", Wording.bound(Text.of("document.cut.roll.of", String.valueOf(roll.roll()), String.valueOf(rolls.size()))));
                html.in("td", "", () -> {
                    if (first[0]) {
                        html.put("div", "name", Text.of("document.cut.ribbon", name(sku), Wording.length(roll.rollLength(), units)));
                    }
                    html.put("div", "cuts", roll.cuts().isEmpty() ? Text.of("document.cut.whole") : cuts(roll));
                });
                html.put("td", "left", Wording.length(roll.leftover(), units));
            });
            first[0] = false;
        }
    }

    private String name(String sku) {
        return proposal.kit().lines().stream().filter(l -> l.sku().equals(sku)).map(KitLine::name).findFirst()
                .or(() -> proposal.catalogue().product(sku).map(Product::name)).orElse(sku);
    }

    private String cuts(RollCuts roll) {
        Map<String, List<String>> purposes = new LinkedHashMap<>();
        roll.cuts().forEach(c -> purposes.computeIfAbsent(Wording.length(c.length(), units), l -> new ArrayList<>()).add(c.purpose()));
        List<String> parts = new ArrayList<>();
        purposes.forEach((length, uses) -> parts.add(Text.of("document.cut.part", Wording.bound(Text.of("plan.cut", String.valueOf(uses.size()), length)),
                purposes(uses))));
        return String.join("; ", parts);
    }

    /** run-4, run-5, accent-2 → runs 4, 5, accent 2. */
    static String purposes(List<String> purposes) {
        Map<String, List<String>> numbers = new LinkedHashMap<>();
        for (String purpose : purposes) {
            int dash = purpose.lastIndexOf('-');
            numbers.computeIfAbsent(dash < 0 ? purpose : purpose.substring(0, dash), k -> new ArrayList<>()).add(purpose.substring(dash + 1));
        }
        List<String> parts = new ArrayList<>();
        numbers.forEach((kind, which) -> parts.add(Text.or("document.cut.for." + kind, "").isEmpty() ? kind
                : Text.of("document.cut.for." + kind, which.size(), String.join(", ", which))));
        return String.join(", ", parts);
    }
}
