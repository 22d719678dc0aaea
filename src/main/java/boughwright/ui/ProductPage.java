package boughwright.ui;

import boughwright.catalogue.CatalogueFault;
import boughwright.catalogue.Product;
import boughwright.consultation.Consultation;
import boughwright.drawing.DressedTree;
import boughwright.publishing.ShopDoor;
import boughwright.shelf.Photos;
import boughwright.shelf.Shelf;
import boughwright.shelf.Uses;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One product: how it looks, all that is said of it, where it has been, why it is proposed or not. */
final class ProductPage extends ShelfPage {

    private static final int PICTURE = 240;
    private static final int MOST_CODES = 12;

    private final ShelfDesk desk;
    private final Shelf shelf;
    private final String sku;
    private final Div picture = new Div();
    private final H1 title = new H1();
    private final Paragraph facts = soft("");
    private ProductForm form;
    private StandingPanel standing;
    private boolean sure;

    ProductPage(ShelfDesk desk, ShopDoor shop, Shelf shelf, Uses uses, Photos photos, String sku) {
        super("product-page");
        this.desk = desk;
        this.shelf = shelf;
        this.sku = sku;
        Optional<Product> product = shelf.catalogue().product(sku);
        if (product.isEmpty()) {
            add(new H1(Text.of("shelf.product.unknown", sku)), Controls.link(Text.of("shelf.product.back"), () -> desk.go(ShelfView.PRODUCTS)));
            return;
        }
        picture.addClassName("product-picture");
        Div seen = new Div(picture, facts, new PhotoPanel(desk, photos, sku, this::colours), uses(uses));
        seen.addClassName("product-seen");
        Div told = new Div();
        told.addClassName("product-told");
        if (shelf.sells(sku)) {
            Map<String, String> looks = new LinkedHashMap<>();
            shop.designer().rulebook().choices().looks().forEach(l -> looks.put(l.id(), l.shownTitle()));
            form = new ProductForm(shelf.cells(sku), looks, Set.of("sku"), this::edit);
            standing = new StandingPanel(shop, sku);
            told.add(standing, form, row());
        } else {
            told.add(soft(Text.of("shelf.product.gone")), Controls.button(Text.of("shelf.product.again"), "quiet", this::again));
        }
        Div body = new Div(seen, told);
        body.addClassName("product-body");
        add(Controls.link(Text.of("shelf.product.back"), () -> desk.go(ShelfView.PRODUCTS)), title, body);
        show(product.get());
    }

    private void show(Product product) {
        title.setText(product.name());
        picture.getElement().setProperty("innerHTML", DressedTree.swatch(product, PICTURE));
        facts.setText(Text.of("shelf.product.facts", product.sku(), product.price().show(), product.pack(), product.stock(), product.shelf()));
    }

    private void edit(String column, String text) {
        if (!desk.gone()) {
            after(shelf.edit(sku, column, text, desk.author()));
        }
    }

    /** Colours that were found on a photo and accepted. */
    private void colours(Map<String, String> cells) {
        if (!desk.gone()) {
            Shelf.Outcome outcome = shelf.edit(sku, cells, desk.author());
            desk.again();
            desk.told(outcome);
        }
    }

    private void after(Shelf.Outcome outcome) {
        List<CatalogueFault> faults = desk.told(outcome);
        form.complain(faults);
        if (faults.isEmpty()) {
            shelf.catalogue().product(sku).ifPresent(this::show);
            standing.outdated();
        }
    }

    private Div row() {
        NativeButton[] off = new NativeButton[1];
        off[0] = Controls.link(Text.of("shelf.product.off"), () -> {
            if (desk.gone()) {
                return;
            }
            if (!sure) {
                sure = true;
                off[0].setText(Text.of("shelf.product.off.sure"));
                off[0].addClassName("sure");
                return;
            }
            Shelf.Outcome outcome = shelf.takeOff(List.of(sku), desk.author());
            desk.go(ShelfView.PRODUCTS);
            desk.told(outcome);
        });
        Anchor like = new Anchor(ShelfView.address(ShelfView.NEW, sku), Text.of("shelf.product.like"));
        Div row = new Div(like, off[0]);
        row.addClassName("choice-row");
        return row;
    }

    /** It comes back as it was, with nothing in stock. */
    private void again() {
        if (!desk.gone()) {
            Shelf.Outcome outcome = shelf.add(shelf.cells(sku), desk.author());
            desk.again();
            desk.told(outcome);
        }
    }

    private Div uses(Uses uses) {
        Map<Uses.Kind, Integer> counts = uses.counts(sku);
        Map<Uses.Kind, List<String>> codes = uses.of(sku, MOST_CODES);
        Div box = new Div(new H2(Text.of("shelf.uses")));
        box.addClassName("section");
        for (Uses.Kind kind : Uses.Kind.values()) {
            Div line = new Div(new Paragraph(Text.of("shelf.uses." + kind.name().toLowerCase(Locale.ROOT), counts.get(kind))));
            Div list = new Div();
            list.addClassName("codes");
            codes.get(kind).forEach(code -> list.add(new Anchor("plan/" + code, Consultation.spoken(code))));
            line.add(list);
            box.add(line);
        }
        return box;
    }

    @Override
    void leave() {
        if (standing != null) {
            standing.leave();
        }
    }
}
