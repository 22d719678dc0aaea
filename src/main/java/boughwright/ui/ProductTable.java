package boughwright.ui;

import boughwright.brief.Word;
import boughwright.catalogue.CatalogueFault;
import boughwright.catalogue.Product;
import boughwright.catalogue.ProductSearch;
import boughwright.catalogue.Traits.Level;
import boughwright.colour.ColourName;
import boughwright.drawing.DressedTree;
import boughwright.shelf.Shelf;
import boughwright.text.Text;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;

/**
 * Products row by row; price, stock, shelf and price level are changed where they stand. Shown a page at a time, since a drawing each for ten
 * thousand products would choke any tablet.
 */
final class ProductTable extends Div {

    private static final int PAGE = 50;

    private final ShelfDesk desk;
    private final Shelf shelf;
    private final Memory memory;
    private final Map<String, String> looks;
    private final Runnable chosenChanged;
    private final Div rows = new Div();
    private final NativeButton more;
    private final Span none = new Span(Text.of("shelf.none"));
    private List<ProductSearch.Found> found = List.of();
    private int drawn;

    /** What stays while one looks at another page. */
    static final class Memory {

        private final TreeSet<String> chosen = new TreeSet<>();
        private ProductSearch search = ProductSearch.ALL;

        ProductSearch search() {
            return search;
        }

        void search(ProductSearch other) {
            search = other;
        }

        /** SKUs that are ticked. */
        TreeSet<String> chosen() {
            return chosen;
        }
    }

    ProductTable(ShelfDesk desk, Shelf shelf, Memory memory, Map<String, String> looks, Runnable chosenChanged) {
        this.desk = desk;
        this.shelf = shelf;
        this.memory = memory;
        this.looks = looks;
        this.chosenChanged = chosenChanged;
        this.more = Controls.button("", "quiet", this::more);
        rows.getElement().setAttribute("role", "table");
        rows.getElement().setAttribute("aria-label", Text.of("shelf.page.products"));
        rows.addClassName("product-rows");
        none.addClassName("soft");
        add(rows, none, more);
        addClassNames("product-table");
    }

    void show(List<ProductSearch.Found> products) {
        found = products;
        drawn = 0;
        rows.removeAll();
        rows.add(head());
        none.setVisible(found.isEmpty());
        more();
    }

    private void more() {
        int to = Math.min(found.size(), drawn + PAGE);
        found.subList(drawn, to).forEach(f -> rows.add(new Line(f)));
        drawn = to;
        more.setText(Text.of("shelf.more", Math.min(PAGE, found.size() - drawn)));
        more.setVisible(drawn < found.size());
    }

    private Div head() {
        Div head = new Div(heading("shelf.choose", true), heading("shelf.picture", true), heading("catalogue.heading.name", false),
                heading("catalogue.heading.colour", false), heading("catalogue.heading.price", false), heading("catalogue.heading.stock", false),
                heading("catalogue.heading.shelf", false), heading("catalogue.heading.level", false));
        head.addClassNames("product-row", "grid-head");
        head.getElement().setAttribute("role", "row");
        return head;
    }

    private static Div heading(String key, boolean unseen) {
        Div heading = new Div(unseen ? Controls.words(Text.of(key), "unseen") : new Span(Text.of(key)));
        heading.getElement().setAttribute("role", "columnheader");
        return heading;
    }

    /** One product. */
    private final class Line extends Div {

        private final String sku;
        private final List<Div> wrong = new ArrayList<>();
        private final Span complaint = new Span();

        Line(ProductSearch.Found found) {
            Product product = found.product();
            this.sku = product.sku();
            addClassName("product-row");
            getElement().setAttribute("role", "row");
            complaint.getElement().setAttribute("role", "alert");
            Div picture = Controls.drawn(DressedTree.swatch(product, 44));
            picture.addClassName("swatch");
            Anchor name = new Anchor(ShelfView.address(ShelfView.OF, sku), product.name());
            String lookTitles = String.join(", ", product.looks().stream().map(l -> looks.getOrDefault(l, l)).toList());
            Div names = new Div(name, Controls.words(lookTitles.isEmpty() ? sku : Text.of("shelf.row.words", sku, lookTitles), "soft"));
            add(cell(tick(product), "tick"), cell(picture, "drawn"), cell(names, "names"), cell(colours(found), "colours-cell"),
                    field("price", product.price().decimal(), "decimal"), field("stock", String.valueOf(product.stock()), "numeric"),
                    field("shelf", product.shelf(), "text"), level(product), cell(complaint, "row-complaint"));
        }

        private Component tick(Product product) {
            Element box = new Element("input").setAttribute("type", "checkbox").setAttribute("aria-label", Text.of("shelf.choose.one", product.name()));
            if (memory.chosen().contains(sku)) {
                box.setAttribute("checked", true);
            }
            box.addEventListener("change", e -> {
                if (e.getEventData().getBoolean("event.target.checked")) {
                    memory.chosen().add(sku);
                } else {
                    memory.chosen().remove(sku);
                }
                chosenChanged.run();
            }).addEventData("event.target.checked");
            Div holder = new Div();
            holder.getElement().appendChild(box);
            return holder;
        }

        private Div colours(ProductSearch.Found found) {
            Product product = found.product();
            Div colours = new Div(Dots.of(product));
            String name = ColourName.of(product.colour()).shown();
            colours.add(Controls.words(memory.search().near().isEmpty() ? name
                    : Text.of("shelf.near.distance", name, String.format(Locale.ENGLISH, "%.1f", found.distance())), "soft"));
            return colours;
        }

        private Div cell(Component content, String className) {
            Div cell = new Div(content);
            cell.addClassNames("cell", className);
            cell.getElement().setAttribute("role", "cell");
            return cell;
        }

        private Div field(String column, String value, String mode) {
            Input input = new Input(ValueChangeMode.ON_CHANGE);
            input.setValue(value);
            input.getElement().setAttribute("inputmode", mode).setAttribute("aria-label", label(column));
            Div cell = cell(input, column + "-cell");
            input.addValueChangeListener(e -> {
                if (e.isFromClient()) {
                    edit(cell, column, column.equals("price") ? Amounts.plain(e.getValue()) : e.getValue());
                }
            });
            return cell;
        }

        private String label(String column) {
            return Text.of("shelf.cell", Text.of("catalogue.heading." + column), sku);
        }

        private Div level(Product product) {
            Div[] cell = new Div[1];
            cell[0] = cell(GridTable.select(Word.words(Level.class), product.level().word(), label("level"), w -> edit(cell[0], "level", w)), "level-cell");
            return cell[0];
        }

        private void edit(Div cell, String column, String text) {
            if (desk.gone()) {
                return;
            }
            List<CatalogueFault> faults = desk.told(shelf.edit(sku, column, text, desk.author()));
            wrong.forEach(w -> w.removeClassName("wrong"));
            wrong.clear();
            complaint.setText("");
            if (!faults.isEmpty()) {
                cell.addClassName("wrong");
                wrong.add(cell);
                complaint.setText(Text.of("shelf.cell.fault", Text.of("catalogue.heading." + faults.get(0).column()), faults.get(0).mend()));
            }
        }
    }
}
