package boughwright.ui;

import boughwright.consultation.Consultations;
import boughwright.house.Comparison;
import boughwright.house.Complaint;
import boughwright.house.HouseCheck;
import boughwright.house.HouseRules;
import boughwright.house.Sheet;
import boughwright.measure.Units;
import boughwright.needs.HouseNumber.Theme;
import boughwright.publishing.Drafts;
import boughwright.publishing.Editions;
import boughwright.publishing.KeptEdition;
import boughwright.publishing.Publisher;
import boughwright.publishing.References;
import boughwright.publishing.Rehearsals;
import boughwright.publishing.ShopDoor;
import boughwright.publishing.ShopUnits;
import boughwright.rulebook.Asked;
import boughwright.text.Text;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Footer;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.OptionalParameter;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Where staff tune, rehearse and publish the house rules; the address names the page. */
@Route(HouseRulesView.ROUTE)
class HouseRulesView extends StaffScreen implements HasUrlParameter<String>, HasDynamicTitle, HouseEdits {

    static final String ROUTE = "house-rules";
    static final String REHEARSAL = "rehearsal";
    static final String PUBLISH = "publish";
    static final String EDITIONS = "editions";
    static final String REFERENCES = "references";
    static final String COMPARE = "compare";

    private final ShopDoor shop;
    private final Editions editions;
    private final Drafts drafts;
    private final Publisher publisher;
    private final References references;
    private final Rehearsals rehearsals;
    private final Consultations consultations;
    private final Units units;
    private final Div content = new Div();
    private final Nav nav = new Nav();
    private final Span state = new Span();
    private final Span sentence = new Span();
    private final Span live = new Span();
    private final StaffNotice notice = new StaffNotice();
    private NativeButton undo;
    private NativeButton redo;
    private HouseDrafting drafting;
    private HousePage shown;
    private String page = "";
    private int pointed;
    private String askedEdition = "";

    HouseRulesView(StaffDoor door, ShopDoor shop, Editions editions, Drafts drafts, Publisher publisher, References references,
            Rehearsals rehearsals, Consultations consultations, ShopUnits units) {
        super("tuning", StaffPlace.HOUSE_RULES.roles(), door);
        this.shop = shop;
        this.editions = editions;
        this.drafts = drafts;
        this.publisher = publisher;
        this.references = references;
        this.rehearsals = rehearsals;
        this.consultations = consultations;
        this.units = units.units();
        content.addClassName("house-content");
    }

    @Override
    public String getPageTitle() {
        return Text.of("house.page-title");
    }

    @Override
    public void setParameter(BeforeEvent event, @OptionalParameter String parameter) {
        page = parameter == null ? "" : parameter;
        Map<String, List<String>> query = event.getLocation().getQueryParameters().getParameters();
        String row = query.getOrDefault("row", List.of("")).get(0);
        pointed = row.matches("\\d{1,3}") ? Integer.parseInt(row) : 0;
        askedEdition = query.getOrDefault("edition", List.of("")).get(0);
        open();
    }

    @Override
    void languageChanged() {
        if (drafting != null) {
            drafting.retell();
        }
        super.languageChanged();
    }

    @Override
    void closed() {
        drafting = null;
    }

    @Override
    void opened(String name) {
        if (drafting == null || !drafting.author().equals(name)) {
            drafting = new HouseDrafting(publisher, drafts, shop, name, units);
        }
        if (page.isEmpty()) {
            page = Asked.topics().get(0);
        }
        Main main = new Main(notice, content);
        Div body = new Div(nav, main);
        body.addClassName("body");
        nav.getElement().setAttribute("aria-label", Text.of("house.pages"));
        state.addClassNames("soft", "summary");
        live.addClassNames("soft", "live");
        Anchor shelf = new Anchor(ShelfView.ROUTE, Text.of("shelf.link"));
        add(header(state, live, shelf), body, footer());
        draw();
    }

    private Footer footer() {
        undo = Controls.button(Text.of("house.undo"), "quiet", () -> travel(true));
        redo = Controls.button(Text.of("house.redo"), "quiet", () -> travel(false));
        sentence.addClassNames("soft", "to-mend");
        Footer footer = new Footer(undo, redo, Controls.button(Text.of("house.compare.button"), "quiet", () -> go(COMPARE)), sentence,
                Controls.button(Text.of("house.rehearse"), "quiet", () -> go(REHEARSAL)), Controls.button(Text.of("house.publish.button"), "strong", () -> go(PUBLISH)));
        footer.addClassNames("bar", "foot");
        return footer;
    }

    private void travel(boolean back) {
        if (gone()) {
            return;
        }
        boolean made = back ? drafting.undo() : drafting.redo();
        draw();
        if (!made) {
            tell(Text.of("house.elsewhere"));
        }
    }

    private void go(String other) {
        page = other;
        pointed = 0;
        getUI().ifPresent(ui -> ui.getPage().getHistory().pushState(null, ROUTE + "/" + other));
        if (!gone()) {
            draw();
            scrollToTop();
        }
    }

    /** Draws the page anew. */
    private void draw() {
        if (shown != null) {
            shown.leave();
        }
        notice.removeAll();
        content.removeAll();
        shown = made();
        content.add(shown);
        if (!askedEdition.isEmpty() && pointed > 0) {
            editions.edition(askedEdition).filter(e -> e.number() != drafting.basedOn()).ifPresent(e ->
                    tell(Text.of("house.pointed", Text.of("house.edition", String.valueOf(e.number()), e.title()))));
        }
        follow();
    }

    private HousePage made() {
        HouseRules rules = drafting.rules();
        if (rules.sheet(page).isPresent()) {
            return new SheetPage(this, page, pointed);
        }
        Optional<Theme> theme = boughwright.brief.Word.read(Theme.class, page);
        if (theme.isPresent()) {
            return new NumbersPage(this, theme.get());
        }
        return switch (page) {
            case HouseCheck.LOOKS -> new LooksPage(this);
            case HouseCheck.PALETTES -> new PalettesPage(this);
            case REHEARSAL -> new RehearsalPage(this, publisher, rehearsals, consultations, references);
            case PUBLISH -> new PublishPage(this, publisher, editions, number -> {
                drafting.again();
                go(EDITIONS);
                tell(Text.of("house.published", editions.edition(number).map(KeptEdition::title).orElse("")));
            });
            case EDITIONS -> new EditionsPage(this, shop, editions, publisher, this::compare, () -> {
                drafting.again();
                draw();
            });
            case REFERENCES -> new ReferencesPage(this, references, consultations, shop);
            default -> new ComparePage(drafting.changes(), () -> {
                boolean thrown = drafting.discard();
                draw();
                tell(Text.of(thrown ? "house.discarded" : "house.elsewhere"));
            });
        };
    }

    private void compare(int first, int second) {
        content.removeAll();
        shown = new ComparePage(name(first), name(second), drafting.told(Comparison.of(publisher.rules(first), publisher.rules(second), units)));
        content.add(shown);
        scrollToTop();
    }

    private String name(int edition) {
        return Text.of("house.edition", String.valueOf(edition), editions.edition(edition).map(KeptEdition::title).orElse(""));
    }

    private void tell(String words) {
        notice.tell(words, true);
    }

    /** Everything about the draft that stands around the page. */
    private void follow() {
        KeptEdition based = editions.edition(drafting.basedOn()).orElseThrow();
        state.setText(Text.of(drafting.pristine() ? "house.state.none" : "house.state.draft", based.title()));
        live.setText(Text.of("house.state.live", editions.edition(shop.liveEdition()).map(KeptEdition::title).orElse("")));
        undo.setEnabled(drafting.canUndo());
        redo.setEnabled(drafting.canRedo());
        long faults = drafting.faults();
        long doubts = drafting.complaints().size() - faults;
        sentence.setText(faults > 0 ? Text.of("house.to-mend", faults) : doubts > 0 ? Text.of("house.to-think", doubts) : "");
        shown.complained(drafting.complaints(page));
        drawNav();
    }

    private void drawNav() {
        nav.removeAll();
        group("house.group.quantities", drafting.rules().sheets().stream().map(Sheet::topic).toList());
        group("house.group.style", List.of(Theme.TOPPER.word(), Theme.VARIETY.word(), Theme.PIECES.word(), Theme.RIBBON.word(), Theme.COLOUR.word(),
                HouseCheck.LOOKS, HouseCheck.PALETTES));
        group("house.group.weights", List.of(Theme.SCORE.word(), Theme.CAUTIONS.word()));
        group("house.group.season", List.of(REHEARSAL, PUBLISH, EDITIONS, REFERENCES));
    }

    private void group(String heading, List<String> pages) {
        Span head = new Span(Text.of(heading));
        head.addClassName("nav-head");
        nav.add(head);
        for (String id : pages) {
            String title = drafting.rules().sheet(id).map(sheet -> drafting.words().of(sheet.title())).orElseGet(() -> HouseCheck.pageTitle(id));
            NativeButton link = new NativeButton(title, e -> go(id));
            link.addClassName("nav-link");
            if (id.equals(page)) {
                link.getElement().setAttribute("aria-current", "page");
                link.getElement().executeJs("setTimeout(() => this.scrollIntoView({block: 'nearest', inline: 'center'}), 150)");
            }
            List<Complaint> complaints = drafting.complaints(id);
            if (!complaints.isEmpty()) {
                Span count = new Span(String.valueOf(complaints.size()));
                count.addClassNames("nav-count", complaints.stream().anyMatch(Complaint::fault) ? "is-fault" : "is-doubt");
                link.add(count);
            }
            nav.add(link);
        }
    }

    @Override
    public HouseDrafting drafting() {
        return drafting;
    }

    @Override
    public void cell(UnaryOperator<HouseRules> change) {
        if (gone()) {
            return;
        }
        if (drafting.change(change)) {
            follow();
        } else {
            draw();
            tell(Text.of("house.elsewhere"));
        }
    }

    @Override
    public void page(UnaryOperator<HouseRules> change) {
        if (gone()) {
            return;
        }
        boolean made = drafting.change(change);
        draw();
        if (!made) {
            tell(Text.of("house.elsewhere"));
        }
    }

    @Override
    protected void onDetach(DetachEvent detach) {
        if (shown != null) {
            shown.leave();
        }
    }
}
