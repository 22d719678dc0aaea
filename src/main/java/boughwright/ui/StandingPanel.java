package boughwright.ui;

import boughwright.brief.BriefReader;
import boughwright.brief.BriefReading;
import boughwright.house.ReferenceBrief;
import boughwright.kit.Cause;
import boughwright.kit.Patience;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Standing;
import boughwright.publishing.References;
import boughwright.publishing.ShopDoor;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether a product is proposed for the trees that shops meet most, and for each of the others what stands in its way. */
final class StandingPanel extends Div {

    private final ShopDoor shop;
    private final String sku;
    private final Later later = new Later();
    private final Div answer = new Div();

    /** How it stands on one tree. */
    private record OnTree(String title, Standing standing) {
    }

    StandingPanel(ShopDoor shop, String sku) {
        this.shop = shop;
        this.sku = sku;
        addClassName("section");
        answer.getElement().setAttribute("role", "status");
        add(new H2(Text.of("standing.head")), answer);
        outdated();
    }

    /** Something has changed since: it is worked out again when asked for. */
    void outdated() {
        answer.removeAll();
        answer.add(ShelfPage.soft(Text.of("standing.about", References.shipped().size())), Controls.button(Text.of("standing.ask"), "quiet", this::ask));
    }

    private void ask() {
        List<OnTree> trees = new ArrayList<>();
        answer.removeAll();
        answer.add(ShelfPage.soft(Text.of("standing.working")));
        later.run(patience -> work(trees, patience), () -> {
        }, () -> show(trees));
    }

    private void work(List<OnTree> trees, Patience patience) {
        Designer designer = shop.designer();
        for (ReferenceBrief brief : References.shipped()) {
            BriefReading reading = new BriefReader(designer.rulebook().choices()).read(brief.brief());
            if (reading instanceof BriefReading.Read read) {
                designer.ifPossible(read.brief(), Adjustments.NONE, Designer.SEED, patience).ifPresent(proposal -> designer.catalogue().product(sku)
                        .ifPresent(product -> trees.add(new OnTree(References.title(brief), Standing.of(proposal, product, designer)))));
            }
        }
    }

    private void show(List<OnTree> trees) {
        answer.removeAll();
        long proposed = trees.stream().filter(t -> t.standing().proposed()).count();
        answer.add(new Paragraph(Text.of("standing.count", proposed, trees.size())));
        trees.stream().filter(t -> t.standing().proposed()).forEach(t -> answer.add(line(t.title(), Text.of("standing.in"))));
        for (Cause.Kind kind : Cause.Kind.values()) {
            List<OnTree> same = trees.stream().filter(t -> t.standing().nearest().flatMap(Standing.Place::cause).equals(Optional.of(kind))).toList();
            if (!same.isEmpty()) {
                group(Text.of("standing.kind." + kind.name().toLowerCase(Locale.ROOT), same.size()), same);
            }
        }
        List<OnTree> noUse = trees.stream().filter(t -> t.standing().places().isEmpty()).toList();
        if (!noUse.isEmpty()) {
            answer.add(ShelfPage.soft(Text.of("standing.no-use", noUse.size())));
        }
    }

    private void group(String head, List<OnTree> trees) {
        NativeDetails details = new NativeDetails(new Span(head));
        Div lines = new Div();
        trees.forEach(t -> t.standing().nearest().ifPresent(p -> lines.add(line(t.title(), Text.of("standing.line", p.role(), p.sentence())))));
        details.setContent(lines);
        details.addClassName("standing-group");
        answer.add(details);
    }

    private static Div line(String tree, String words) {
        Div line = new Div(Controls.words(tree, "standing-tree"), new Span(words));
        line.addClassName("standing-line");
        return line;
    }

    void leave() {
        later.stop();
    }
}
