package boughwright.ui;

import boughwright.brief.BriefFault;
import boughwright.brief.Palette;
import boughwright.brief.Word;
import boughwright.consultation.Consultation;
import boughwright.consultation.Interviews;
import boughwright.consultation.Saved;
import boughwright.drawing.PaletteTree;
import boughwright.drawing.RoomPicture;
import boughwright.drawing.TreeShape;
import boughwright.measure.Length;
import boughwright.measure.Units;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.text.Language;
import boughwright.text.Text;
import com.vaadin.flow.component.DetachEvent;
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
import com.vaadin.flow.server.auth.AnonymousAllowed;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** The interview: one question a page on large cards, the tree in its room drawn to scale beside them. */
@AnonymousAllowed
@Route("interview")
class InterviewView extends Screen implements HasUrlParameter<String>, HasDynamicTitle {

    private static final double PERSON = 1.753;
    private static final RoomDrawings DRAWN = new RoomDrawings();

    private final Books books;
    private Interview interview;
    private QuestionPages pages;
    private Optional<Consultation> consultation = Optional.empty();
    private final Div progress = new Div();
    private final Span progressWords = new Span();
    private final Span code = new Span();
    private final Div question = new Div();
    private final Drawing room = new Drawing("room");
    private final Paragraph fault = new Paragraph();
    private final Span waits = new Span();
    private final Later later = new Later();
    private final NativeButton back;
    private final NativeButton next;
    private final NativeButton units;
    private Designer designer;
    private boolean whyOpen;
    private Question shown;
    private List<Object> roomShows = List.of();

    InterviewView(Books books) {
        super("interview");
        this.books = books;
        // Before the first word is written: what is taken up again is spoken of in its own language.
        books.open();
        back = Controls.button(Text.of("interview.back"), "quiet", this::back);
        next = Controls.button("", "strong", this::next);
        units = Controls.pill("", false, this::switchUnits);
        units.getElement().removeAttribute("aria-pressed");
    }

    /**
     * Goes on where a consultation stands.
     *
     * @param code when it is missing, the one that is open on this tablet; without one, a new one begins with the first answer
     */
    @Override
    public void setParameter(BeforeEvent event, @OptionalParameter String code) {
        removeAll();
        if (code != null && !books.mayOpen(code)) {
            addClassName("code-page");
            add(CustomerBar.plain(), new Main(new CodeEntry(books, Text.of("kiosk.code.plan-closed"))));
            return;
        }
        removeClassName("code-page");
        consultation = Optional.ofNullable(code).or(() -> books.open().present()).flatMap(books.interviews()::open);
        Answers answers = consultation.map(this::answered).orElseGet(Answers::new);
        Question at = consultation.flatMap(c -> Word.read(Question.class, c.question())).orElse(consultation.isEmpty() ? Question.TREE : Question.OWNED);
        interview = new Interview(answers, at, () -> designer().rulebook().choices(), this::keep);
        pages = new QuestionPages(answers, this::designer, this::answered, this::lastYear);
        add(header(), body(), footer());
        tellPage();
        show();
    }

    /** Of an interview that has a plan, what the plan is made of by now: it may have been changed since. */
    private Answers answered(Consultation kept) {
        return Answers.of(books.consultations().open(kept.code()).map(Saved::brief).orElse(kept.answers()), kept.units());
    }

    /** The code is given with the first answer. */
    private void keep(Answers answers, Question at) {
        Interviews.State state = new Interviews.State(at.word(), answers.brief(), answers.units, Language.now().tag());
        if (consultation.isPresent()) {
            books.interviews().keep(consultation.get().code(), state);
            books.open().touch(books.marks());
            return;
        }
        Consultation begun = books.interviews().begin(state);
        consultation = Optional.of(begun);
        books.open().open(begun.code(), books.marks());
        code.setText(Text.of("proposal.code", begun.spoken()));
        tellPage();
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
    Optional<String> about() {
        return consultation.map(Consultation::spoken);
    }

    /** The shop as it was when the interview began, whatever is published meanwhile. */
    private Designer designer() {
        if (designer == null) {
            designer = books.shop().designer();
        }
        return designer;
    }

    @Override
    void languageChanged() {
        super.languageChanged();
        if (interview == null) {
            getUI().ifPresent(ui -> ui.getPage().reload());
            return;
        }
        fault.setText("");
        if (consultation.isPresent()) {
            interview.answered();
        }
        removeAll();
        add(header(), body(), footer());
        show();
    }

    @Override
    public String getPageTitle() {
        return Text.of("interview.page-title");
    }

    private Header header() {
        progress.addClassName("progress");
        progress.getElement().setAttribute("role", "img");
        progressWords.addClassName("soft");
        Div where = new Div(progress, progressWords);
        where.addClassName("where");
        code.setText(consultation.map(c -> Text.of("proposal.code", c.spoken())).orElse(""));
        code.addClassName("code");
        return CustomerBar.of(where, code, units, new LanguageChoice());
    }

    private Div body() {
        question.addClassName("question");
        fault.addClassName("fault");
        fault.getElement().setAttribute("role", "alert");
        Main main = new Main(fault, question);
        main.addClassName("asks");
        room.addClassName("room");
        Section aside = new Section(room);
        aside.getElement().setAttribute("aria-label", Text.of("interview.room-label"));
        aside.addClassName("stage");
        Div body = new Div(main, aside);
        body.addClassName("body");
        return body;
    }

    private Footer footer() {
        waits.addClassNames("waits", "soft");
        waits.getElement().setAttribute("role", "status");
        Footer footer = new Footer(back, waits, next);
        footer.addClassNames("bar", "foot");
        return footer;
    }

    /** What was wrong before may be right now; the next step will tell. */
    private void answered() {
        stay();
        interview.answered();
        fault.setText("");
        show();
    }

    /** Something else was touched while the tree was being put together. */
    private void stay() {
        later.cancel();
        waits.setText("");
    }

    private void back() {
        stay();
        whyOpen = false;
        fault.setText("");
        interview.back();
        show();
        scrollToTop();
    }

    private void next() {
        whyOpen = false;
        Optional<BriefFault> wrong = interview.next();
        fault.setText(wrong.map(w -> w.field().equals("budget") ? Text.of("budget.plain") : w.mend()).orElse(""));
        wrong.ifPresent(w -> fault.getElement().executeJs("this.scrollIntoView({block: 'center'})"));
        if (wrong.isEmpty() && next.hasClassName("finish")) {
            finish();
        } else {
            show();
            if (wrong.isEmpty()) {
                scrollToTop();
            }
        }
    }

    /** The plan is kept under the code of its interview; made a second time it keeps what hands have asked for since. */
    private void finish() {
        interview.answered();
        String kept = consultation.orElseThrow().code();
        String brief = interview.answers().brief();
        Optional<Saved> before = books.consultations().open(kept);
        Adjustments hand = before.map(b -> b.adjustments().keeping(Map.of())).orElse(Adjustments.NONE);
        long seed = before.map(Saved::seed).orElse(Designer.SEED);
        Outcome[] outcome = new Outcome[1];
        later.run(patience -> outcome[0] = books.consultations().workOut(designer(), brief, hand, seed, patience), () -> waits.setText(Text.of("interview.waits")),
                () -> finished(kept, brief, outcome[0]));
    }

    private void finished(String kept, String brief, Outcome outcome) {
        waits.setText("");
        if (outcome instanceof Outcome.BadBrief bad) {
            fault.setText(bad.faults().get(0).sentence());
            return;
        }
        Saved saved = books.consultations().go(kept, brief, outcome);
        getUI().ifPresent(ui -> ui.navigate(saved.fits() ? WaysView.class : ProposalView.class, saved.code()));
    }

    private void lastYear(String typed) {
        if (typed.isBlank()) {
            return;
        }
        Optional<Duration> pause = books.tries().begin();
        Optional<Consultation> earlier = pause.isPresent() ? Optional.empty() : books.interviews().open(typed);
        if (earlier.filter(e -> CodeEntry.take(books, e.code(), interview.answers())).isEmpty()) {
            fault.setText(pause.map(CodeEntry::wait).orElseGet(() -> Text.of("api.no-code", typed)));
            fault.getElement().executeJs("this.scrollIntoView({block: 'center'})");
            return;
        }
        books.tries().right();
        answered();
        books.interviews().follow(consultation.orElseThrow().code(), earlier.get().code());
    }

    private void switchUnits() {
        Answers answers = interview.answers();
        answers.units = answers.units == Units.FEET ? Units.METRES : Units.FEET;
        answers.height = answers.heightRead().map(h -> h.show(answers.units)).orElse(answers.height);
        answers.diameter = Length.read(answers.diameter).map(d -> d.show(answers.units)).orElse(answers.diameter);
        answers.ceiling = Length.read(answers.ceiling).map(c -> c.show(answers.units)).orElse(answers.ceiling);
        if (consultation.isPresent()) {
            interview.answered();
        }
        show();
    }

    private void show() {
        units.setText(Text.of(interview.answers().units == Units.FEET ? "units.feet" : "units.metres"));
        units.getElement().setAttribute("aria-label", Text.of("units.switch", units.getText()));
        showProgress();
        Question at = interview.at();
        SteadyButtons before = at == shown ? SteadyButtons.in(question) : SteadyButtons.none();
        shown = at;
        question.removeAll();
        NativeButton why = Controls.link(Text.of("interview.why"), this::toggleWhy);
        why.getElement().setAttribute("aria-expanded", String.valueOf(whyOpen));
        Paragraph reason = new Paragraph(Text.of(at.whyKey()));
        reason.addClassName("soft");
        reason.setVisible(whyOpen);
        Div whyBox = new Div(why, reason);
        whyBox.addClassName("why");
        question.add(Controls.words(Text.of(at.topicKey()), "topic"), new H1(Text.of(at.titleKey())));
        question.add(pages.page(at));
        question.add(whyBox);
        before.stayIn(question);
        back.setText(Text.of("interview.back"));
        back.setVisible(!interview.first());
        next.setText(interview.last() ? Text.of("interview.finish")
                : Text.of("interview.next", Text.within(Text.of(Question.values()[at.ordinal() + 1].topicKey()))));
        next.setClassName("finish", interview.last());
        showRoom();
    }

    private void toggleWhy() {
        whyOpen = !whyOpen;
        show();
    }

    private void showProgress() {
        progress.removeAll();
        for (int i = 1; i <= interview.count(); i++) {
            Span step = new Span();
            step.addClassName(i < interview.number() ? "done" : i == interview.number() ? "now" : "ahead");
            progress.add(step);
        }
        String words = Text.of("interview.progress", interview.number(), interview.count());
        progress.getElement().setAttribute("aria-label", words);
        progressWords.setText(words);
    }

    private void showRoom() {
        Answers answers = interview.answers();
        Optional<Length> height = answers.heightRead().filter(h -> h.metres() > 0.5 && h.metres() < 8);
        TreeShape shape = TreeShape.of(height.map(Length::metres).orElse(2.3),
                height.flatMap(h -> answers.diameterRead()).map(Length::metres).filter(d -> d > 0.1 && d < 8).orElse(1.3), answers.fullness);
        if (interview.at() == Question.PALETTE) {
            Palette palette = pages.palette();
            String words = Text.of("interview.palette.tree.words", palette.shownTitle());
            drawRoom(List.of(shape, palette.colours(), words), () -> PaletteTree.svg(shape, palette, Text.of("interview.palette.tree"), words));
            return;
        }
        Optional<Length> ceiling = Length.read(answers.ceiling).filter(c -> c.metres() > 1.2 && c.metres() < 19);
        String label = ceiling.map(c -> ceilingWords(c, height)).orElse("");
        String title = height.map(h -> Text.of("interview.room-title", h.show(answers.units))).orElse(Text.of("interview.room-title.unknown"));
        String person = new Length(PERSON).show(answers.units);
        drawRoom(List.of(shape, ceiling, label, person, title, height.isPresent()), () -> RoomPicture.svg(shape, ceiling.map(Length::metres).orElse(null),
                RoomPicture.Room.of(label, person, title).withTreeKnown(height.isPresent()).withGround(false).withSize(400, 520)));
    }

    /** Only when something in it has changed: it is most of what a page weighs. @param shows all that decides how it looks */
    private void drawRoom(List<Object> shows, Supplier<String> drawing) {
        if (!shows.equals(roomShows)) {
            roomShows = shows;
            room.draw(() -> DRAWN.of(shows, drawing));
        }
    }

    private String ceilingWords(Length ceiling, Optional<Length> height) {
        Units shown = interview.answers().units;
        if (height.isEmpty()) {
            return Text.of("interview.ceiling", ceiling.show(shown));
        }
        double spare = ceiling.metres() - height.get().metres();
        return spare < 0 ? Text.of("interview.ceiling.short", ceiling.show(shown))
                : Text.of("interview.ceiling.spare", ceiling.show(shown), new Length(spare).show(shown));
    }
}
