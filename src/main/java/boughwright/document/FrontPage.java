package boughwright.document;

import boughwright.brief.Brief;
import boughwright.brief.Palette;
import boughwright.colour.ColourName;
import boughwright.colour.Srgb;
import boughwright.drawing.QrCode;
import boughwright.measure.Money;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Page 1: the tree, whose it is, what it costs and what it takes. */
final class FrontPage {

    private static final List<String> PARTS = List.of("main", "second", "spark", "ground");
    /** Characters of a title that is set large, and of a line of one that is set small; the height of such a line, points. */
    private static final int SHORT_TITLE = 30;
    private static final int LINE_OF_TITLE = 42;
    private static final double TITLE_LINE = 27;
    /** Between the picture and the facts, points. */
    private static final double GAP = 20;
    /** The QR code's side without its quiet zone, points: 21 mm, which a phone reads from a hand's distance. */
    private static final double QR_SIDE = 60;

    private final Html html;
    private final Proposal proposal;
    private final Optional<String> code;
    private final Optional<String> atHome;

    FrontPage(Html html, Proposal proposal, Optional<String> code, Optional<String> atHome) {
        this.html = html;
        this.proposal = proposal;
        this.code = code;
        this.atHome = atHome;
    }

    void write(double aspect, Paper paper) {
        String title = Wording.title(proposal.brief());
        html.in("div", "front", () -> {
            html.in("div", "mast", () -> {
                html.put("span", "kind", Text.of("document.kind"));
                html.put("span", "shop", proposal.edition().shop());
            });
            html.put("h1", title.length() > SHORT_TITLE ? "small" : "", title);
            html.put("p", "brief", brief(proposal.brief()));
            html.in("div", "spread", () -> {
                picture(aspect, paper, title);
                html.in("div", "facts", () -> {
                    html.with("style", String.format(Locale.ROOT, "margin-left:%.2fpt", paper.pictureWidth() + GAP));
                    facts();
                });
            });
        });
    }

    private static String brief(Brief brief) {
        return Text.of("document.brief",
                Wording.length(brief.tree().height(), brief.units()),
                Wording.length(brief.tree().widestDiameter(), brief.units()),
                Wording.bound(Text.of("document.fullness." + brief.tree().fullness().word())),
                Wording.bound(Text.of("document.seen." + brief.tree().seenFrom().word())),
                Wording.bound(Text.of("document.look", brief.look().shownTitle())),
                Wording.bound(Text.of("document.abundance." + brief.abundance().word())));
    }

    private void picture(double aspect, Paper paper, String title) {
        double height = paper.pictureHeight() - TITLE_LINE * (title.length() / LINE_OF_TITLE);
        double width = Math.min(paper.pictureWidth(), height * aspect);
        String size = String.format(Locale.ROOT, "width:%.2fpt;height:%.2fpt", width, width / aspect);
        html.in("div", "picture", () -> html.with("style", String.format(Locale.ROOT, "width:%.2fpt", paper.pictureWidth()))
                .in("svg", "", () -> html.with("style", size).with("alt", Wording.unbound(Text.of("document.picture", title)))));
    }

    private void facts() {
        code.ifPresent(c -> fact("document.fact.code", () -> html.put("p", "code", c).put("p", "", Text.of("document.fact.code.use"))));
        fact("document.fact.total", () -> {
            html.put("p", "total", proposal.kit().total().show());
            proposal.kit().budget().ifPresent(b -> html.put("p", "", budget(b)));
        });
        fact("document.fact.time", () -> html.put("p", "figure", Wording.duration(proposal.plan().minutes()))
                .put("p", "", Text.of("document.fact.time.who")));
        fact("document.fact.ladder", () -> html.put("p", "", proposal.plan().ladder()));
        fact("document.fact.palette", () -> palette(proposal.brief().palette()));
        fact("document.fact.contents", () -> {
            contents("pick", Text.of("document.pick"));
            if (!proposal.layout().cutList().isEmpty()) {
                contents("cut", Text.of("document.cut"));
            }
            contents("steps", Text.of("document.steps", proposal.plan().steps().size()));
            contents("care", Text.of("document.care"));
        });
        atHome.ifPresent(address -> fact("document.fact.at-home", () -> qr(address)));
        html.put("p", "edition", Text.of("document.edition", proposal.edition().title()));
    }

    /** Drawn as bars, since the page's one picture is the tree; the address stands beneath for who has no camera. */
    private void qr(String address) {
        QrCode code = new QrCode(address);
        double module = QR_SIDE / code.size();
        html.in("div", "qr", () -> html.with("style", String.format(Locale.ROOT, "width:%.2fpt;height:%.2fpt", QR_SIDE, QR_SIDE))
                .text("").in("div", "bars", () -> code.bars().forEach(bar -> html.in("div", "bar", () -> html.with("style", String.format(Locale.ROOT,
                        "left:%.3fpt;top:%.3fpt;width:%.3fpt;height:%.3fpt", bar.x() * module, bar.y() * module, bar.width() * module, module + 0.05))))));
        html.in("p", "address", () -> html.in("a", "", () -> html.with("href", address).with("title", address).text(address)));
    }

    private void fact(String key, Runnable inside) {
        html.in("div", "fact", () -> {
            html.put("h2", "", Text.of(key));
            inside.run();
        });
    }

    private String budget(Money budget) {
        Money left = budget.minus(proposal.kit().total());
        return left.amount().signum() < 0
                ? Text.of("document.budget.over", budget.show(), proposal.kit().total().minus(budget).show())
                : Text.of("document.budget", budget.show(), left.show());
    }

    private void palette(Palette palette) {
        html.put("p", "", palette.shownTitle());
        html.in("div", "chips", () -> {
            for (int i = 0; i < PARTS.size(); i++) {
                Srgb colour = palette.colours().get(i);
                String part = Text.of("document.palette." + PARTS.get(i));
                html.in("div", "chip", () -> html.in("div", "spot", () -> html.with("style", "background-color:" + colour.hex())).put("p", "", part)
                        .put("p", "shade", ColourName.of(colour).shown()));
            }
        });
    }

    private void contents(String id, String title) {
        html.in("div", "entry", () -> html.in("a", "", () -> html.with("href", "#" + id).with("title", title).text(title)));
    }
}
