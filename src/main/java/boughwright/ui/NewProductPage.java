package boughwright.ui;

import boughwright.catalogue.CatalogueFault;
import boughwright.publishing.ShopDoor;
import boughwright.shelf.Shelf;
import boughwright.text.Text;
import com.vaadin.flow.component.html.H1;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One product put on the shelf by hand, from nothing or like another. */
final class NewProductPage extends ShelfPage {

    private final Map<String, String> cells = new HashMap<>();
    private final ShelfDesk desk;
    private final ShopDoor shop;
    private final Shelf shelf;
    private final String like;

    /** @param like SKU of the product that this one is like; any other text for none */
    NewProductPage(ShelfDesk desk, ShopDoor shop, Shelf shelf, String like) {
        super("product-page");
        this.desk = desk;
        this.shop = shop;
        this.shelf = shelf;
        this.like = like;
        cells.putAll(shelf.cells(like));
        List.of("sku", "gtin", "stock").forEach(cells::remove);
        cells.put("currency", shop.designer().rulebook().choices().currency().getCurrencyCode());
        cells.putIfAbsent("pack", "1");
        show();
    }

    @Override
    boolean retell() {
        removeAll();
        show();
        return true;
    }

    private void show() {
        Map<String, String> looks = new LinkedHashMap<>();
        shop.designer().rulebook().choices().looks().forEach(l -> looks.put(l.id(), l.shownTitle()));
        ProductForm form = new ProductForm(cells, looks, Set.of(), cells::put);
        add(new H1(Text.of("shelf.page.new")), soft(Text.of(like.isEmpty() ? "shelf.new.about" : "shelf.new.like", like)), form,
                Controls.button(Text.of("shelf.new.keep"), "strong", () -> {
                    if (desk.gone()) {
                        return;
                    }
                    Shelf.Outcome outcome = shelf.add(cells, desk.author());
                    if (outcome instanceof Shelf.Outcome.Done) {
                        desk.go(ShelfView.OF, cells.get("sku").strip());
                    }
                    List<CatalogueFault> faults = desk.told(outcome);
                    form.complain(faults);
                }));
    }
}
