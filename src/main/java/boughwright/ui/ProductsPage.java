package boughwright.ui;

import boughwright.needs.Trait;
import boughwright.brief.Look;
import boughwright.brief.Word;
import boughwright.catalogue.Product;
import boughwright.catalogue.ProductSearch;
import boughwright.catalogue.Traits.Family;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Level;
import boughwright.catalogue.Traits.Texture;
import boughwright.colour.Srgb;
import boughwright.needs.Role;
import boughwright.publishing.ShopDoor;
import boughwright.shelf.Shelf;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** The shelf as it is: everything that is sold, found by what it is called or looks like, changed where it stands or many at once. */
final class ProductsPage extends ShelfPage {

    private static final int TYPING_MILLIS = 250;

    private final Shelf shelf;
    private final ProductTable.Memory memory;
    private final Map<String, String> looks = new LinkedHashMap<>();
    private final Span count = new Span();
    private final ProductTable table;
    private final BulkBar bulk;
    private final Input colour = new Input(ValueChangeMode.ON_CHANGE);
    private final NativeButton anyColour;
    private List<ProductSearch.Found> found = List.of();

    ProductsPage(ShelfDesk desk, ShopDoor shop, Shelf shelf, ProductTable.Memory memory) {
        super("products-page");
        this.shelf = shelf;
        this.memory = memory;
        shop.designer().rulebook().choices().looks().forEach(l -> looks.put(l.id(), l.shownTitle()));
        this.bulk = new BulkBar(desk, shelf, looks, memory.chosen(), this::allFound, this::refresh);
        this.table = new ProductTable(desk, shelf, memory, looks, bulk::follow);
        this.anyColour = Controls.link(Text.of("shelf.near.any"), () -> search(memory.search().withNear(Optional.empty())));
        count.addClassName("soft");
        count.getElement().setAttribute("role", "status");
        Div head = new Div(new H1(Text.of("shelf.page.products")), count, new CatalogueDownloads(shelf));
        head.addClassName("entry-head");
        add(head, filters(), bulk, table);
        refresh();
    }

    private Div filters() {
        Input text = new Input(ValueChangeMode.TIMEOUT);
        text.setValueChangeTimeout(TYPING_MILLIS);
        text.setType("search");
        text.setPlaceholder(Text.of("shelf.search.example"));
        text.setValue(memory.search().text());
        text.addValueChangeListener(e -> search(memory.search().withText(e.getValue())));
        Div wide = Controls.labelled("shelf-search", Text.of("shelf.search"), text);
        wide.addClassName("wide-field");
        Map<String, String> allLooks = new LinkedHashMap<>();
        allLooks.put("", Text.of("shelf.any"));
        allLooks.putAll(looks);
        Map<String, String> roles = new LinkedHashMap<>();
        roles.put("", Text.of("shelf.any"));
        Arrays.stream(Role.values()).filter(Role::bought).forEach(r -> roles.put(r.word(), Text.of("role." + r.word())));
        Div filters = new Div(
                Controls.select("shelf-role", Text.of("catalogue.heading.roles"), roles, memory.search().role().map(Role::word).orElse(""),
                        w -> search(memory.search().withRole(Word.read(Role.class, w)))),
                Controls.select("shelf-look", Text.of("catalogue.heading.looks"), allLooks, memory.search().look(), w -> search(memory.search().withLook(w))),
                words("family", Family.class, memory.search().family(), ProductSearch::withFamily),
                words("texture", Texture.class, memory.search().texture(), ProductSearch::withTexture),
                words("finish", Finish.class, memory.search().finish(), ProductSearch::withFinish),
                words("level", Level.class, memory.search().level(), ProductSearch::withLevel),
                near(),
                Controls.select("shelf-stock", Text.of("catalogue.heading.stock"), named("shelf.stock.", ProductSearch.Stock.class), memory.search().stock().word(),
                        w -> search(memory.search().withStock(Word.read(ProductSearch.Stock.class, w).orElse(ProductSearch.Stock.ANY)))),
                Controls.select("shelf-order", Text.of("shelf.order"), named("shelf.order.", ProductSearch.Order.class), memory.search().order().word(),
                        w -> search(memory.search().withOrder(Word.read(ProductSearch.Order.class, w).orElse(ProductSearch.Order.SKU)))));
        filters.addClassName("shelf-filters");
        NativeDetails narrowing = new NativeDetails(new Span(Text.of("shelf.narrow")));
        narrowing.setContent(filters);
        narrowing.setOpen(true);
        narrowing.addClassName("narrowing");
        // On a phone they would fill the first screen.
        narrowing.getElement().executeJs("if (matchMedia('(max-width: 560px)').matches) this.open = false");
        Div all = new Div(wide, narrowing);
        all.addClassName("shelf-search");
        return all;
    }

    private static <W extends Enum<W> & Word> Map<String, String> named(String keys, Class<W> choices) {
        Map<String, String> named = new LinkedHashMap<>();
        Word.words(choices).forEach(w -> named.put(w, Text.of(keys + w)));
        return named;
    }

    private <W extends Enum<W> & Word> Div words(String column, Class<W> choices, Optional<W> chosen, BiFunction<ProductSearch, Optional<W>, ProductSearch> with) {
        Map<String, String> options = new LinkedHashMap<>();
        options.put("", Text.of("shelf.any"));
        Word.words(choices).forEach(w -> options.put(w, Trait.word(w)));
        return Controls.select("shelf-" + column, Text.of("catalogue.heading." + column), options, chosen.map(Word::word).orElse(""),
                w -> search(with.apply(memory.search(), Word.read(choices, w))));
    }

    private Div near() {
        colour.setType("color");
        colour.setId("shelf-near");
        colour.setValue(memory.search().near().map(Srgb::hex).orElse("#a3202e"));
        colour.addValueChangeListener(e -> {
            if (e.isFromClient()) {
                search(memory.search().withNear(Srgb.read(e.getValue())));
            }
        });
        NativeLabel label = new NativeLabel(Text.of("shelf.near"));
        label.setFor(colour);
        Div box = new Div(colour, anyColour);
        box.addClassName("near");
        Div field = new Div(label, box);
        field.addClassName("field");
        return field;
    }

    private void search(ProductSearch other) {
        memory.search(other);
        refresh();
    }

    /** Finds and draws anew. */
    private void refresh() {
        List<Product> all = shelf.onSale();
        found = memory.search().in(all);
        memory.chosen().retainAll(all.stream().map(Product::sku).toList());
        count.setText(Text.of("shelf.count", found.size(), all.size()));
        anyColour.setVisible(memory.search().near().isPresent());
        table.show(found);
        bulk.follow();
    }

    private List<String> allFound() {
        return found.stream().map(f -> f.product().sku()).toList();
    }
}
