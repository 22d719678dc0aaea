package boughwright.ui;

import boughwright.brief.Brief;
import boughwright.brief.BriefFault;
import boughwright.consultation.Consultation;
import boughwright.consultation.Reopened;
import boughwright.kit.Patience;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.measure.Units;
import boughwright.text.Text;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.OptionalParameter;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A page about one kept consultation, which its address names by the code. */
abstract class PlanScreen extends Screen implements HasUrlParameter<String>, HasDynamicTitle {

    private final Books books;
    private final Later later = new Later();
    private Proposing proposing;
    private String code;
    private boolean moved;

    PlanScreen(String name, Books books) {
        super(name);
        this.books = books;
        // Before the first word is written: what is taken up again is spoken of in its own language.
        books.open();
    }

    final Books books() {
        return books;
    }

    /** A consultation was opened on this page; {@link #show} follows. */
    void opened() {
    }

    /** Shows the page anew for what the consultation is now. */
    abstract void show();

    final Proposing proposing() {
        return proposing;
    }

    /** Whether catalogue, stock or house rules have changed since the plan was kept. */
    final boolean moved() {
        return moved;
    }

    /** The shop under the edition that is live, when this consultation was made with another. */
    final Optional<Designer> newerEdition() {
        Designer live = books.shop().designer();
        return Optional.of(live).filter(d -> !d.rulebook().edition().id().equals(proposing.designer().rulebook().edition().id()));
    }

    @Override
    public String getPageTitle() {
        return proposing == null ? Text.of("brand") : Text.of("proposal.page-title", proposing.saved().spoken());
    }

    @Override
    void languageChanged() {
        super.languageChanged();
        retold(() -> proposing.retell());
    }

    private void switchUnits() {
        books.interviews().units(proposing.saved().code(), proposing.units() == Units.FEET ? Units.METRES : Units.FEET);
        retold(() -> proposing.read(proposing.units() == Units.FEET ? Units.METRES : Units.FEET));
    }

    /** The plan in other words, which change nothing of it. */
    private void retold(Runnable telling) {
        if (proposing == null) {
            open();
        } else {
            workOut(patience -> telling.run(), this::show);
        }
    }

    @Override
    public void setParameter(BeforeEvent event, @OptionalParameter String code) {
        this.code = code;
        open();
    }

    private void open() {
        if (code == null || !books.mayOpen(code)) {
            askForCode();
            return;
        }
        Optional<Reopened> reopened = books.consultations().reopen(code);
        if (reopened.isEmpty()) {
            sorry(Text.of("api.no-code.title"), List.of(Text.of("api.no-code", code)));
        } else if (reopened.get().outcome() instanceof Outcome.BadBrief bad) {
            sorry(Text.of("proposal.stale"), bad.faults().stream().map(BriefFault::sentence).toList());
        } else {
            proposing = new Proposing(reopened.get().designer(), books.consultations(), reopened.get());
            ChosenUnits.of(code).or(() -> books.interviews().open(code).map(Consultation::units)).filter(u -> u != proposing.units())
                    .ifPresent(proposing::read);
            moved = reopened.get().moved();
            tellPage();
            opened();
            show();
        }
    }

    @Override
    protected void onDetach(DetachEvent detach) {
        later.stop();
    }

    @Override
    void touched() {
        books.open().touch(books.marks());
    }

    @Override
    final Optional<String> about() {
        return Optional.ofNullable(proposing).map(p -> p.saved().spoken());
    }

    /** The address alone opens nothing: somebody else may have left it behind. */
    private void askForCode() {
        removeAll();
        Main main = new Main(new CodeEntry(books, Text.of("kiosk.code.plan-closed"), code == null ? "" : code, () -> {
            removeAll();
            removeClassName("code-page");
            open();
        }));
        addClassName("code-page");
        add(CustomerBar.plain(), main);
    }

    private void sorry(String title, List<String> sentences) {
        removeAll();
        Main main = new Main(new H1(title));
        sentences.forEach(s -> main.add(new Paragraph(s)));
        main.add(new Anchor("", Text.of("proposal.new")));
        main.addClassName("lost");
        add(main);
    }

    /** Makes a change to the consultation and shows what comes of it; a change that follows too soon cancels it. */
    final void change(Runnable change) {
        workOut(patience -> proposing.with(patience, change), this::show);
    }

    final void workOut(Consumer<Patience> work, Runnable ready) {
        addClassName("busy");
        later.run(work, () -> { }, () -> {
            removeClassName("busy");
            ready.run();
        });
    }

    /** Works out what is added to the page when it is there. */
    final void beside(Consumer<Patience> work, Runnable ready) {
        later.beside(work, ready);
    }

    /** The proposal that other trees are set beside; where there is only a clash, that is shown instead. */
    final Optional<Proposal> asked() {
        Optional<Proposal> asked = proposing.proposal();
        if (asked.isEmpty()) {
            go(ProposalView.class);
        }
        return asked;
    }

    final void go(Class<? extends PlanScreen> screen) {
        UI.getCurrent().navigate(screen, proposing.saved().code());
    }

    final Header header() {
        Span summary = Controls.words(summary(), "soft");
        summary.addClassName("summary");
        Span code = new Span(Text.of("proposal.code", proposing.saved().spoken()));
        code.addClassName("code");
        NativeButton units = Controls.pill(Text.of(proposing.units() == Units.FEET ? "units.feet" : "units.metres"), false, this::switchUnits);
        units.getElement().removeAttribute("aria-pressed");
        units.getElement().setAttribute("aria-label", Text.of("units.switch", units.getText()));
        return CustomerBar.of(summary, code, units, new LanguageChoice());
    }

    private String summary() {
        Brief brief = proposing.proposal().map(Proposal::brief).orElseGet(() -> ((Outcome.NoKitFits) proposing.outcome()).brief());
        return Text.of("proposal.summary", brief.tree().height().show(brief.units()), Text.of("fullness." + brief.tree().fullness().word()),
                Text.of("seen-from." + brief.tree().seenFrom().word()), Text.of("abundance." + brief.abundance().word()), brief.palette().shownTitle());
    }
}
