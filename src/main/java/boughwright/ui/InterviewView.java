package boughwright.ui;

import boughwright.brief.BriefFault;
import boughwright.brief.Owned;
import boughwright.brief.Palette;
import boughwright.consultation.Consultations;
import boughwright.consultation.Reopened;
import boughwright.consultation.Saved;
import boughwright.publishing.ShopDoor;
import boughwright.drawing.PaletteTree;
import boughwright.drawing.RoomPicture;
import boughwright.drawing.TreeShape;
import boughwright.measure.Length;
import boughwright.measure.Units;
import boughwright.needs.Adjustments;
import boughwright.proposal.Bought;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Footer;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.PreserveOnRefresh;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import java.util.Optional;

/** The interview: one question a page on large cards, the tree in its room drawn to scale beside them. */
@AnonymousAllowed
@Route("")
@PreserveOnRefresh
class InterviewView extends Screen implements HasDynamicTitle {

    private static final double PERSON = 1.753;

    private final ShopDoor shop;
    private final Consultations consultations;
    private final Interview interview;
    private final QuestionPages pages;
    private final Div progress = new Div();
    private final Span progressWords = new Span();
    private final Div question = new Div();
    private final Div room = new Div();
    private final Paragraph fault = new Paragraph();
    private final NativeButton back;
    private final NativeButton next;
    private final NativeButton units;
    private Designer designer;
    private boolean whyOpen;

    InterviewView(ShopDoor shop, Consultations consultations) {
        super("interview");
        this.shop = shop;
        this.consultations = consultations;
        this.interview = new Interview(new Answers(), Question.TREE, () -> designer().rulebook().choices(), (answers, at) -> { });
        this.pages = new QuestionPages(interview.answers(), this::designer, this::answered, this::open, this::lastYear);
        back = Controls.button(Text.of("interview.back"), "quiet", this::back);
        next = Controls.button("", "strong", this::next);
        units = Controls.pill("", false, this::switchUnits);
        units.getElement().removeAttribute("aria-pressed");
        add(header(), body(), footer());
        show();
    }

    /** The shop as it was when the interview began, whatever is published meanwhile. */
    private Designer designer() {
        if (designer == null) {
            designer = shop.designer();
        }
        return designer;
    }

    @Override
    void languageChanged() {
        super.languageChanged();
        fault.setText("");
        removeAll();
        add(header(), body(), footer());
        show();
    }

    @Override
    public String getPageTitle() {
        return Text.of("interview.page-title");
    }

    private Header header() {
        Span brand = Controls.words(Text.of("brand"), "brand");
        progress.addClassName("progress");
        progress.getElement().setAttribute("role", "img");
        progressWords.addClassName("soft");
        Div where = new Div(progress, progressWords);
        where.addClassName("where");
        Header header = new Header(brand, where, units, new LanguageChoice());
        header.addClassName("bar");
        return header;
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
        Footer footer = new Footer(back, next);
        footer.addClassNames("bar", "foot");
        return footer;
    }

    /** What was wrong before may be right now; the next step will tell. */
    private void answered() {
        fault.setText("");
        show();
    }

    private void back() {
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

    private void finish() {
        String brief = interview.answers().brief();
        Outcome outcome = designer().propose(brief, Adjustments.NONE, Designer.SEED);
        if (outcome instanceof Outcome.BadBrief bad) {
            fault.setText(bad.faults().get(0).sentence());
            return;
        }
        Saved saved = consultations.begin(brief, outcome);
        getUI().ifPresent(ui -> ui.navigate(saved.fits() ? WaysView.class : ProposalView.class, saved.code()));
    }

    /** Opens a kept plan by the code that somebody typed. */
    private void open(String code) {
        if (code.isBlank()) {
            fault.setText("");
            return;
        }
        Optional<Saved> saved = consultations.open(code);
        fault.setText(saved.isPresent() ? "" : Text.of("api.no-code", code));
        saved.ifPresent(s -> getUI().ifPresent(ui -> ui.navigate(ProposalView.class, s.code())));
    }

    /** What was bought by a plan of an earlier year is the customer's own now. */
    private void lastYear(String code) {
        if (code.isBlank()) {
            return;
        }
        Optional<Outcome.Made> made = consultations.reopen(code).map(Reopened::outcome).filter(Outcome.Made.class::isInstance)
                .map(Outcome.Made.class::cast);
        if (made.isEmpty()) {
            fault.setText(Text.of("api.no-code", code));
            fault.getElement().executeJs("this.scrollIntoView({block: 'center'})");
            return;
        }
        for (Owned owned : Bought.by(made.get().proposal())) {
            owned.described().ifPresentOrElse(d -> interview.answers().ownedInWords.add(d.text()),
                    () -> interview.answers().owned.put(owned.sku(), owned.quantity()));
        }
        answered();
    }

    private void switchUnits() {
        Answers answers = interview.answers();
        answers.units = answers.units == Units.FEET ? Units.METRES : Units.FEET;
        answers.height = answers.heightRead().map(h -> h.show(answers.units)).orElse(answers.height);
        answers.diameter = Length.read(answers.diameter).map(d -> d.show(answers.units)).orElse(answers.diameter);
        answers.ceiling = Length.read(answers.ceiling).map(c -> c.show(answers.units)).orElse(answers.ceiling);
        show();
    }

    private void show() {
        units.setText(Text.of(interview.answers().units == Units.FEET ? "units.feet" : "units.metres"));
        units.getElement().setAttribute("aria-label", Text.of("units.switch", units.getText()));
        showProgress();
        Question at = interview.at();
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
            room.getElement().setProperty("innerHTML", PaletteTree.svg(shape, palette, Text.of("interview.palette.tree"),
                    Text.of("interview.palette.tree.words", palette.shownTitle())));
            return;
        }
        Optional<Length> ceiling = Length.read(answers.ceiling).filter(c -> c.metres() > 1.2 && c.metres() < 19);
        String label = ceiling.map(c -> ceilingWords(c, height)).orElse("");
        String title = height.map(h -> Text.of("interview.room-title", h.show(answers.units))).orElse(Text.of("interview.room-title.unknown"));
        room.getElement().setProperty("innerHTML", RoomPicture.svg(shape, ceiling.map(Length::metres).orElse(null),
                RoomPicture.Room.of(label, new Length(PERSON).show(answers.units), title).withTreeKnown(height.isPresent()).withGround(false).withSize(400, 520)));
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
