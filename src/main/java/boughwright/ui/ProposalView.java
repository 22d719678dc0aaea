package boughwright.ui;

import boughwright.brief.Brief;
import boughwright.consultation.Consultation;
import boughwright.counter.Hold;
import boughwright.counter.Holding;
import boughwright.counter.Pack;
import boughwright.counter.Terms;
import boughwright.kit.Kit;
import boughwright.layout.Moving;
import boughwright.measure.Money;
import boughwright.proposal.Outcome;
import boughwright.proposal.OwnNotes;
import boughwright.proposal.Phrases;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.AnchorTarget;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Footer;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;

/** The proposal: the dressed tree, the kit line by line with its reasons, what it costs, how to put it up. */
@AnonymousAllowed
@Route("plan")
class ProposalView extends PlanScreen {

    /** What the right-hand side shows. */
    private enum Side { KIT, COLOURS, STEPS, CARE, CHANGE }

    private Side side = Side.KIT;
    private boolean fitted = true;
    private final Stage stage = new Stage(new Stage.Hand() {
        @Override
        public void shift(String id, boughwright.layout.Side viewer, double right, double up) {
            proposing().proposal().flatMap(p -> new Moving(p.layout(), p.brief()).shifted(id, viewer, right, up))
                    .ifPresent(spot -> change(() -> proposing().move(id, spot)));
        }

        @Override
        public void back(String id) {
            change(() -> proposing().moveBack(id));
        }

        @Override
        public void allBack() {
            change(proposing()::moveAllBack);
        }
    });

    ProposalView(Books books) {
        super("proposal", books);
    }

    private static String stand(Side side) {
        return "plan-" + side.name().toLowerCase(java.util.Locale.ROOT);
    }

    @Override
    void opened() {
        String code = proposing().saved().code();
        String stood = books().interviews().open(code).map(Consultation::question).orElse("");
        side = Arrays.stream(Side.values()).filter(s -> stand(s).equals(stood)).findFirst().orElse(Side.KIT);
        books().interviews().at(code, stand(side));
    }

    @Override
    void show() {
        SteadyButtons before = SteadyButtons.in(this);
        removeAll();
        add(header());
        boolean fits = proposing().proposal().isPresent();
        if (fits != fitted) {
            fitted = fits;
            scrollToTop();
        }
        if (proposing().outcome() instanceof Outcome.NoKitFits none) {
            Main main = new Main(new ConflictPanel(none.conflict(), way -> change(() -> proposing().take(way))), travel(),
                    new ChangePanel(proposing(), none.brief(), this::change));
            main.addClassName("conflict-page");
            add(main);
            return;
        }
        Proposal proposal = proposing().proposal().orElseThrow();
        stage.show(proposal, proposing().saved().code());
        setClassName("with-colours", side == Side.COLOURS);
        Section drawing = new Section(stage);
        drawing.addClassNames("stage", "dressed");
        drawing.getElement().setAttribute("aria-label", Text.of("proposal.drawing-label"));
        Div sides = sides();
        before.stayIn(sides);
        Main main = new Main(title(proposal), sides, travel(), changed(), notes(proposal), content(proposal));
        main.addClassName("kit");
        Div body = new Div(drawing, main);
        body.addClassName("body");
        Footer footer = footer(proposal);
        before.stayIn(footer);
        add(body, footer);
    }

    private Div title(Proposal proposal) {
        Brief brief = proposal.brief();
        long products = proposal.kit().lines().stream().map(l -> l.sku()).distinct().count();
        Paragraph words = new Paragraph(Text.of("proposal.words", products, Phrases.duration(proposal.plan().minutes())));
        words.addClassName("soft");
        Div title = new Div(new H1(Phrases.title(brief)), words);
        if (moved()) {
            title.add(new Paragraph(Text.of("proposal.moved")));
        }
        newerEdition().ifPresent(live -> title.add(new Paragraph(Text.of("proposal.edition", proposing().designer().rulebook().edition().title(),
                live.rulebook().edition().title())), Controls.link(Text.of("proposal.edition.renew"), () -> change(() -> proposing().under(live)))));
        title.addClassName("title");
        return title;
    }

    private Div sides() {
        Div sides = new Div();
        sides.addClassNames("choice-row", "sides");
        for (Side each : Side.values()) {
            sides.add(Controls.pill(Text.of("proposal.side." + each.name().toLowerCase(java.util.Locale.ROOT)), each == side, () -> turnTo(each)));
        }
        return sides;
    }

    /** Which side is open is kept, so that it is open again wherever the plan is taken up. */
    private void turnTo(Side other) {
        side = other;
        books().interviews().at(proposing().saved().code(), stand(other));
        show();
    }

    /** Back and forth through the changes, and to what else can be seen of this consultation. */
    private Div travel() {
        Div row = new Div();
        row.addClassNames("choice-row", "travel");
        if (proposing().canUndo() || proposing().canRedo()) {
            NativeButton undo = Controls.pill(Text.of("change.undo"), false, () -> change(proposing()::undo));
            undo.setEnabled(proposing().canUndo());
            NativeButton redo = Controls.pill(Text.of("change.redo"), false, () -> change(proposing()::redo));
            redo.setEnabled(proposing().canRedo());
            row.add(undo, redo);
        }
        if (!proposing().hand().kept().isEmpty()) {
            row.add(Controls.pill(Text.of("change.afresh"), false, () -> change(proposing()::afresh)));
        }
        if (proposing().proposal().isPresent()) {
            row.add(Controls.link(Text.of("ways.link"), () -> go(WaysView.class)), Controls.link(Text.of("years.link"), () -> go(YearsView.class)));
        }
        row.add(Controls.link(Text.of("kiosk.questions"), this::questions));
        return row;
    }

    /** Back to the interview of this consultation, with all that was answered. */
    private void questions() {
        String code = proposing().saved().code();
        books().interviews().at(code, Question.TREE.word());
        UI.getCurrent().navigate(InterviewView.class, code);
    }

    private Div changed() {
        UnorderedList list = new UnorderedList();
        proposing().changes().forEach(c -> list.add(new ListItem(c)));
        Div box = new Div(new H2(Text.of("changed.head")), list);
        box.addClassName("changed");
        box.getElement().setAttribute("role", "status");
        box.setVisible(!proposing().changes().isEmpty());
        return box;
    }

    private Div notes(Proposal proposal) {
        Div notes = new Div();
        notes.addClassName("notes");
        OwnNotes.of(proposal).forEach(n -> notes.add(new Paragraph(n)));
        return notes;
    }

    private Div content(Proposal proposal) {
        return switch (side) {
            case KIT -> new KitList(proposing(), proposal, this::change);
            case COLOURS -> new ColoursSide(proposing(), proposal, stage, this::change);
            case STEPS -> new StepsList(proposal.plan(), proposing().saved().code());
            case CARE -> new CautionsList(proposal.plan());
            case CHANGE -> new ChangePanel(proposing(), proposal.brief(), this::change);
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
        String proven = kit.gap() == 0 ? Text.of("proposal.proven") : Text.of("proposal.proven.gap",
                BigDecimal.valueOf(kit.gap() * 100).setScale(1, RoundingMode.CEILING).toPlainString());
        String words = kit.budget().map(b -> Text.of("proposal.of-budget", b.show(), proven)).orElse(Text.of("proposal.no-budget", proven));
        Span proof = Controls.words(words, "soft");
        proof.addClassName("wide-only");
        money.add(proof);
        Anchor print = new Anchor("api/proposals/" + proposing().saved().code() + "/plan.pdf?" + Addresses.told(proposing().units()), Text.of("proposal.print"));
        print.setTarget(AnchorTarget.BLANK);
        print.addClassNames("button", "strong");
        NativeButton change = Controls.button(Text.of("proposal.side.change"), "quiet", () -> turnTo(Side.CHANGE));
        change.addClassName("wide-only");
        Footer footer = new Footer(money);
        holding(proposal).ifPresent(footer::add);
        footer.add(change, print);
        footer.addClassNames("bar", "foot");
        return footer;
    }

    /** What is held of it; the way to the counter for staff, and for a customer alone the offer to hold it until they are there, once. */
    private Optional<Component> holding(Proposal proposal) {
        String code = proposing().saved().code();
        if (Staff.present().filter(p -> p.role().isOneOf(StaffPlace.COUNTER.roles())).isPresent()) {
            Anchor counter = new Anchor(CounterView.of(code), Text.of("proposal.counter"));
            counter.addClassNames("button", "quiet");
            return Optional.of(counter);
        }
        Optional<Hold> newest = books().holds().newest(code);
        if (newest.isPresent()) {
            return newest.filter(h -> h.state().open()).map(h -> Controls.words(Text.of("proposal.hold.is", ShopTime.moment(h.endsAt())), "held"));
        }
        int minutes = books().terms().now().number(Terms.Number.ALONE_MINUTES);
        if (minutes == 0 || Pack.of(proposal).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Controls.button(Text.of("proposal.hold"), "quiet", () -> hold(proposal, code, Duration.ofMinutes(minutes))));
    }

    private void hold(Proposal proposal, String code, Duration time) {
        // One wish a consultation: what is held for a customer alone is not held over and over.
        Holding holding = books().holds().hold(code, Pack.of(proposal), time, Text.of("counter.customer"), "alone " + code);
        show();
        if (holding instanceof Holding.Held held) {
            tell(Text.of("proposal.hold.done", ShopTime.moment(held.hold().endsAt()), proposing().saved().spoken()));
        } else if (holding instanceof Holding.Scarce scarce) {
            tell(HoldPanel.scarce(scarce, proposal));
        }
    }

    private void tell(String words) {
        Div line = new Div(words);
        line.addClassNames("changed", "hold-told");
        line.getElement().setAttribute("role", "status");
        getChildren().filter(Footer.class::isInstance).findFirst().ifPresent(foot -> getElement().insertChild(getElement().indexOfChild(foot.getElement()), line.getElement()));
    }

    private static int percent(Money total, Money budget) {
        return total.amount().movePointRight(2).divide(budget.amount(), 0, RoundingMode.HALF_UP).min(BigDecimal.valueOf(100)).intValue();
    }
}
