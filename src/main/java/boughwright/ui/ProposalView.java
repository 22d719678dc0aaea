package boughwright.ui;

import boughwright.brief.Brief;
import boughwright.brief.BriefFault;
import boughwright.consultation.Consultations;
import boughwright.consultation.Reopened;
import boughwright.consultation.ShopDoor;
import boughwright.kit.Kit;
import boughwright.measure.Money;
import boughwright.proposal.Outcome;
import boughwright.proposal.Phrases;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Footer;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.OptionalParameter;
import com.vaadin.flow.router.Route;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** The proposal: the dressed tree, the kit line by line with its reasons, what it costs, how to put it up. */
@Route("plan")
class ProposalView extends Screen implements HasUrlParameter<String>, HasDynamicTitle {

    /** What the right-hand side shows. */
    private enum Side { KIT, STEPS, CARE, CHANGE }

    private final ShopDoor shop;
    private final Consultations consultations;
    private Proposing proposing;
    private Side side = Side.KIT;
    private boolean fitted = true;
    private boolean moved;
    private final Stage stage = new Stage();

    ProposalView(ShopDoor shop, Consultations consultations) {
        super("proposal");
        this.shop = shop;
        this.consultations = consultations;
    }

    @Override
    public String getPageTitle() {
        return proposing == null ? Text.of("brand") : Text.of("proposal.page-title", proposing.saved().spoken());
    }

    @Override
    public void setParameter(BeforeEvent event, @OptionalParameter String code) {
        Optional<Reopened> reopened = code == null ? Optional.empty() : consultations.reopen(code, shop.designer());
        if (reopened.isEmpty()) {
            sorry(Text.of("api.no-code.title"), List.of(Text.of("api.no-code", code == null ? "" : code)));
        } else if (reopened.get().outcome() instanceof Outcome.BadBrief bad) {
            sorry(Text.of("proposal.stale"), bad.faults().stream().map(BriefFault::sentence).toList());
        } else {
            proposing = new Proposing(shop.designer(), consultations, reopened.get());
            moved = reopened.get().moved();
            show();
        }
    }

    private void sorry(String title, List<String> sentences) {
        removeAll();
        Main main = new Main(new H1(title));
        sentences.forEach(s -> main.add(new Paragraph(s)));
        main.add(new Anchor("", Text.of("proposal.new")));
        main.addClassName("lost");
        add(main);
    }

    private void show() {
        removeAll();
        add(header());
        boolean fits = proposing.proposal().isPresent();
        if (fits != fitted) {
            fitted = fits;
            scrollToTop();
        }
        if (proposing.outcome() instanceof Outcome.NoKitFits none) {
            Main main = new Main(new ConflictPanel(none.conflict(), way -> change(() -> proposing.take(way))),
                    new ChangePanel(proposing, none.brief(), this::show));
            main.addClassName("conflict-page");
            add(main);
            return;
        }
        Proposal proposal = proposing.proposal().orElseThrow();
        stage.show(proposal, shop.designer().catalogue());
        Section drawing = new Section(stage);
        drawing.addClassNames("stage", "dressed");
        drawing.getElement().setAttribute("aria-label", Text.of("proposal.drawing-label"));
        Main main = new Main(title(proposal), sides(), content(proposal));
        main.addClassName("kit");
        Div body = new Div(drawing, main);
        body.addClassName("body");
        add(body, footer(proposal));
    }

    private void change(Runnable change) {
        change.run();
        show();
    }

    private Header header() {
        Anchor brand = new Anchor("", Text.of("brand"));
        brand.addClassName("brand");
        Span summary = Controls.words(summary(), "soft");
        summary.addClassName("summary");
        Span code = new Span(Text.of("proposal.code", proposing.saved().spoken()));
        code.addClassName("code");
        Header header = new Header(brand, summary, code);
        header.addClassName("bar");
        return header;
    }

    private String summary() {
        Brief brief = proposing.proposal().map(Proposal::brief)
                .orElseGet(() -> ((Outcome.NoKitFits) proposing.outcome()).brief());
        return Text.of("proposal.summary", brief.tree().height().show(brief.units()), Text.of("fullness." + brief.tree().fullness().word()),
                Text.of("seen-from." + brief.tree().seenFrom().word()), Text.of("abundance." + brief.abundance().word()), brief.palette().title());
    }

    private Div title(Proposal proposal) {
        Brief brief = proposal.brief();
        long products = proposal.kit().lines().stream().map(l -> l.sku()).distinct().count();
        Paragraph words = new Paragraph(Text.of("proposal.words", products, Phrases.duration(proposal.plan().minutes())));
        words.addClassName("soft");
        Div title = new Div(new H1(Phrases.title(brief)), words);
        if (moved) {
            title.add(new Paragraph(Text.of("proposal.moved")));
        }
        title.addClassName("title");
        return title;
    }

    private Div sides() {
        Div sides = new Div();
        sides.addClassNames("choice-row", "sides");
        for (Side each : Side.values()) {
            sides.add(Controls.pill(Text.of("proposal.side." + each.name().toLowerCase(java.util.Locale.ROOT)), each == side, () -> change(() -> side = each)));
        }
        return sides;
    }

    private Div content(Proposal proposal) {
        return switch (side) {
            case KIT -> new KitList(proposing, proposal, this::show);
            case STEPS -> new StepsList(proposal.plan());
            case CARE -> new CautionsList(proposal.plan());
            case CHANGE -> new ChangePanel(proposing, proposal.brief(), this::show);
        };
    }

    private Footer footer(Proposal proposal) {
        Kit kit = proposal.kit();
        Span total = Controls.words(kit.total().show(), "total");
        Div money = new Div(total);
        money.addClassName("money");
        kit.budget().ifPresent(budget -> {
            Div bar = new Div(new Span());
            bar.addClassName("meter");
            bar.getElement().setAttribute("aria-hidden", "true");
            bar.getElement().getStyle().set("--spent", percent(kit.total(), budget) + "%");
            money.add(bar);
        });
        String gap = java.math.BigDecimal.valueOf(kit.gap() * 100).setScale(1, RoundingMode.CEILING).toPlainString();
        String words = kit.budget().map(b -> Text.of("proposal.of-budget", b.show(), gap)).orElse(Text.of("proposal.no-budget", gap));
        Span proof = Controls.words(words, "soft");
        proof.addClassName("wide-only");
        money.add(proof);
        Anchor print = new Anchor("api/proposals/" + proposing.saved().code() + "/plan.pdf", Text.of("proposal.print"));
        print.setTarget(AnchorTarget.BLANK);
        print.addClassNames("button", "strong");
        NativeButton change = Controls.button(Text.of("proposal.side.change"), "quiet", () -> change(() -> side = Side.CHANGE));
        change.addClassName("wide-only");
        Footer footer = new Footer(money, change, print);
        footer.addClassNames("bar", "foot");
        return footer;
    }

    private static int percent(Money total, Money budget) {
        return total.amount().movePointRight(2).divide(budget.amount(), 0, RoundingMode.HALF_UP).min(java.math.BigDecimal.valueOf(100)).intValue();
    }
}
