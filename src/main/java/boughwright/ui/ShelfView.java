package boughwright.ui;

import boughwright.catalogue.CatalogueFault;
import boughwright.publishing.ShopDoor;
import boughwright.shelf.FileMappings;
import boughwright.shelf.Photos;
import boughwright.shelf.Shelf;
import boughwright.shelf.Till;
import boughwright.shelf.Uses;
import boughwright.text.Text;
import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.WildcardParameter;
import java.util.List;
import java.util.Map;

/** Where staff keep the shop's products: the shelf as it is, files that are brought in, what was done, the till. The address names the page. */
@Route(ShelfView.ROUTE)
class ShelfView extends StaffScreen implements HasUrlParameter<String>, HasDynamicTitle, ShelfDesk {

    static final String ROUTE = "shelf";
    static final String PRODUCTS = "";
    static final String FILE = "file";
    static final String DONE = "done";
    static final String TILL = "till";
    static final String NEW = "new";
    static final String OF = "of";

    private final ShopDoor shop;
    private final Shelf shelf;
    private final Uses uses;
    private final Photos photos;
    private final Till till;
    private final FileMappings mappings;
    private final Div content = new Div();
    private final StaffNotice notice = new StaffNotice();
    private final Nav nav = new Nav();
    private final Span state = new Span();
    private final ProductTable.Memory memory = new ProductTable.Memory();
    private ShelfPage shown;
    private boolean retelling;
    private String page = PRODUCTS;
    private String sku = "";
    private String author = "";

    ShelfView(StaffDoor door, ShopDoor shop, Shelf shelf, Uses uses, Photos photos, Till till, FileMappings mappings) {
        super("stocking", StaffPlace.SHELF.roles(), door);
        this.shop = shop;
        this.shelf = shelf;
        this.uses = uses;
        this.photos = photos;
        this.till = till;
        this.mappings = mappings;
        content.addClassName("house-content");
    }

    @Override
    public String getPageTitle() {
        return Text.of("shelf.page-title");
    }

    @Override
    public void setParameter(BeforeEvent event, @WildcardParameter String parameter) {
        page = parameter;
        Map<String, List<String>> query = event.getLocation().getQueryParameters().getParameters();
        sku = query.getOrDefault("sku", List.of("")).get(0);
        open();
    }

    @Override
    void opened(String name) {
        author = name;
        // The shelf is there once the shop is open.
        shop.designer();
        Main main = new Main(notice, content);
        Div body = new Div(nav, main);
        body.addClassName("body");
        nav.getElement().setAttribute("aria-label", Text.of("shelf.pages"));
        state.addClassNames("soft", "summary");
        Anchor rules = new Anchor(HouseRulesView.ROUTE, Text.of("house.link"));
        rules.addClassName("live");
        add(header(state, rules), body);
        draw();
    }

    @Override
    void languageChanged() {
        retelling = true;
        super.languageChanged();
        retelling = false;
    }

    private void draw() {
        if (retelling && shown != null && shown.retell()) {
            state.setText(Text.of("shelf.state", shelf.onSale().size()));
            drawNav();
            return;
        }
        if (shown != null) {
            shown.leave();
        }
        notice.removeAll();
        content.removeAll();
        shown = made();
        content.add(shown);
        state.setText(Text.of("shelf.state", shelf.onSale().size()));
        drawNav();
    }

    private ShelfPage made() {
        return switch (page) {
            case OF -> new ProductPage(this, shop, shelf, uses, photos, sku);
            case FILE -> new FilePage(this, shop, shelf, mappings);
            case DONE -> new DonePage(this, shelf);
            case TILL -> new TillPage(this, till);
            case NEW -> new NewProductPage(this, shop, shelf, sku);
            default -> new ProductsPage(this, shop, shelf, memory);
        };
    }

    private void drawNav() {
        nav.removeAll();
        group("shelf.group.now", List.of(PRODUCTS, NEW));
        group("shelf.group.bring", List.of(FILE, TILL));
        group("shelf.group.look-back", List.of(DONE));
    }

    private void group(String heading, List<String> pages) {
        Span head = new Span(Text.of(heading));
        head.addClassName("nav-head");
        nav.add(head);
        for (String each : pages) {
            NativeButton link = new NativeButton(Text.of("shelf.page." + (each.isEmpty() ? "products" : each)), e -> go(each));
            link.addClassName("nav-link");
            if (each.equals(page) || each.equals(PRODUCTS) && page.equals(OF)) {
                link.getElement().setAttribute("aria-current", "page");
            }
            nav.add(link);
        }
    }

    @Override
    public String author() {
        return author;
    }

    @Override
    public void tell(String words, boolean well) {
        notice.tell(words, well);
    }

    @Override
    public List<CatalogueFault> told(Shelf.Outcome outcome) {
        state.setText(Text.of("shelf.state", shelf.onSale().size()));
        if (outcome instanceof Shelf.Outcome.Refused refused) {
            tell(Text.of("shelf.refused", refused.faults().get(0).mend()), false);
            return refused.faults();
        }
        if (outcome instanceof Shelf.Outcome.Done done) {
            notice.tell(Text.of("shelf.kept", done.products()), true).add(Controls.link(Text.of("shelf.undo"), () -> {
                if (!gone()) {
                    undo(done.event().id());
                }
            }));
        } else {
            tell(Text.of("shelf.nothing"), true);
        }
        return List.of();
    }

    private void undo(int event) {
        Shelf.Outcome outcome = shelf.undo(event, author);
        again();
        if (outcome instanceof Shelf.Outcome.Refused refused) {
            tell(Text.of("shelf.undo.refused", refused.faults().get(0).mend()), false);
        } else {
            tell(Text.of("shelf.undone"), true);
        }
    }

    @Override
    public void again() {
        draw();
    }

    @Override
    public void go(String other) {
        go(other, "");
    }

    @Override
    public void go(String other, String product) {
        page = other;
        sku = product;
        getUI().ifPresent(ui -> ui.getPage().getHistory().pushState(null, address(other, product)));
        if (!gone()) {
            draw();
            scrollToTop();
        }
    }

    /** A SKU goes into the query, since it may hold what a path must not. */
    static String address(String page, String sku) {
        return ROUTE + (page.isEmpty() ? "" : "/" + page) + (sku.isEmpty() ? "" : "?sku=" + Addresses.part(sku));
    }

    @Override
    protected void onDetach(DetachEvent detach) {
        if (shown != null) {
            shown.leave();
        }
    }
}
