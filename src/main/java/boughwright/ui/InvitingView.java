package boughwright.ui;

import boughwright.brief.Look;
import boughwright.rulebook.Edition;
import boughwright.text.Text;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import java.util.List;

/** The page that invites: a dressed tree, and the two ways to begin. It is what a tablet shows that nobody uses. */
@AnonymousAllowed
@Route("")
class InvitingView extends Screen implements HasDynamicTitle {

    private final Books books;

    InvitingView(Books books) {
        super("inviting");
        this.books = books;
        // Before the first word is written: what is taken up again is spoken of in its own language.
        books.open();
        show();
    }

    private void show() {
        removeAll();
        Edition edition = books.shop().designer().rulebook().edition();
        add(new Main(words(edition.shop()), stage(edition.choices().looks())));
    }

    @Override
    void languageChanged() {
        super.languageChanged();
        show();
    }

    @Override
    public String getPageTitle() {
        return Text.of("brand");
    }

    /** Somebody who only looks here has left nothing; one who has come back from a consultation has. */
    @Override
    boolean rest() {
        return books.open().none();
    }

    private Div words(String shop) {
        Div words = new Div(Controls.words(shop, "invite-shop"), new H1(Text.of("kiosk.invite.title")));
        Paragraph what = new Paragraph(Text.of("kiosk.invite.words"));
        what.addClassName("soft");
        NativeButton begin = Controls.button(Text.of("kiosk.invite.begin"), "strong", this::begin);
        begin.addClassName("huge");
        NativeButton code = Controls.button(Text.of("kiosk.invite.code"), "quiet", () -> UI.getCurrent().navigate(CodeView.class));
        code.addClassName("huge");
        Div ways = new Div(begin, code);
        ways.addClassName("invite-ways");
        words.add(what, ways);
        books.open().present().flatMap(books.interviews()::open).ifPresent(open -> words.add(Controls.link(Text.of("kiosk.invite.go-on", open.spoken()), this::goOn)));
        NativeButton full = Controls.link(Text.of("kiosk.full-screen"), () -> { });
        full.addClassName("fill");
        full.getElement().setAttribute("data-full-screen", true);
        Div foot = new Div(new LanguageChoice(), full);
        foot.addClassName("invite-foot");
        words.add(foot);
        words.addClassName("invite-words");
        return words;
    }

    /** The pictures are fetched by the browser one after another, and are nobody's: the session does not carry them. */
    private static Div stage(List<Look> looks) {
        Div stage = new Div();
        stage.addClassName("invite-stage");
        for (int i = 0; i < looks.size(); i++) {
            Look look = looks.get(i);
            Element tree = new Element("img");
            String address = "api/show-trees/" + look.id() + ".svg";
            tree.setAttribute(i == 0 ? "src" : "data-src", address).setAttribute("alt", "").setAttribute("class", i == 0 ? "invite-tree shown" : "invite-tree")
                    .setAttribute("data-look", look.shownTitle());
            stage.getElement().appendChild(tree);
        }
        Div name = new Div(looks.isEmpty() ? "" : looks.get(0).shownTitle());
        name.addClassName("invite-look");
        stage.add(name);
        return stage;
    }

    private void begin() {
        books.open().beginAnother();
        UI.getCurrent().navigate(InterviewView.class);
    }

    private void goOn() {
        String code = books.open().present().orElseThrow();
        if (books.consultations().open(code).isPresent()) {
            UI.getCurrent().navigate(ProposalView.class, code);
        } else {
            UI.getCurrent().navigate(InterviewView.class);
        }
    }
}
