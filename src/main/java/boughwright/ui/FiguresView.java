package boughwright.ui;

import boughwright.catalogue.Product;
import boughwright.counter.FigureBooks;
import boughwright.counter.Figures;
import boughwright.measure.Money;
import boughwright.publishing.ShopDoor;
import boughwright.text.Language;
import boughwright.text.Text;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.function.ToIntFunction;

/** How the shop does: consultations, how many say yes, what they buy, what is swapped out, what stood in the way. */
@Route(FiguresView.ROUTE)
class FiguresView extends DeskScreen implements BeforeEnterObserver {

    static final String ROUTE = "figures";
    private static final int PRODUCTS = 12;
    private static final List<Integer> SPANS = List.of(7, 30, 90);
    /** Of nothing there is no mean. */
    private static final String NOTHING_YET = "–";

    private final FigureBooks books;
    private final ShopDoor shop;
    private int days = SPANS.get(1);

    FiguresView(StaffDoor door, FigureBooks books, ShopDoor shop) {
        super("figures", StaffPlace.FIGURES, door);
        this.books = books;
        this.shop = shop;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        open();
    }

    @Override
    void draw(Main main) {
        Figures figures = books.of(books.today().minusDays(days - 1L), books.today());
        Div spans = new Div();
        spans.addClassName("choice-row");
        for (int each : SPANS) {
            spans.add(Controls.pill(Text.of("figures.days", each), each == days, () -> act(() -> days = each)));
        }
        spans.add(csv("figures-days.csv", "figures.csv.days", () -> days(figures)), csv("figures-products.csv", "figures.csv.products", () -> products(figures)));
        main.add(new H1(Text.of("figures.head")), spans);
        Figures.Day all = figures.all();
        if (all.consultations() == 0) {
            main.add(new Paragraph(Text.of("figures.none")));
            return;
        }
        Currency currency = shop.designer().rulebook().choices().currency();
        Div tiles = new Div(tile("figures.consultations", String.valueOf(all.consultations())), tile("figures.planned", String.valueOf(all.planned())),
                tile("figures.acceptance", Text.of("figures.percent", Text.number(figures.acceptance()))),
                tile("figures.mean", all.taken() == 0 ? NOTHING_YET : new Money(figures.meanTotal(Math.max(0, currency.getDefaultFractionDigits())), currency).show()),
                tile("figures.clashed", String.valueOf(all.clashed())), tile("figures.collected", String.valueOf(all.collected())));
        tiles.addClassName("tiles");
        main.add(tiles, chart(figures));
        Div tables = new Div(top("figures.swapped", figures, Figures.Use::swappedOut), top("figures.blocked", figures, Figures.Use::blocked));
        tables.addClassName("figure-tables");
        main.add(tables);
    }

    private static Div tile(String key, String value) {
        Div tile = new Div(Controls.words(value, "figure"), Controls.words(Text.of(key), "soft"));
        tile.addClassName("tile");
        return tile;
    }

    private static Section chart(Figures figures) {
        List<DayChart.Day> days = figures.days().stream().map(d -> new DayChart.Day(Text.shortDay(d.day()), d.consultations(), d.taken())).toList();
        Figures.Day all = figures.all();
        Section section = new Section(new H2(Text.of("figures.chart")), Controls.drawn(DayChart.svg(days, Text.of("figures.chart"),
                Text.of("figures.chart.words", all.consultations(), all.taken()), Text.of("figures.chart.all"), Text.of("figures.chart.taken"))));
        section.addClassNames("panel", "day-chart");
        return section;
    }

    private Section top(String key, Figures figures, ToIntFunction<Figures.Use> what) {
        List<Figures.Use> most = figures.products().stream().filter(u -> what.applyAsInt(u) > 0)
                .sorted(Comparator.comparingInt(what).reversed().thenComparing(Figures.Use::sku)).limit(PRODUCTS).toList();
        Section section = new Section(new H2(Text.of(key)));
        section.addClassName("panel");
        if (most.isEmpty()) {
            section.add(new Paragraph(Text.of(key + ".none")));
            return section;
        }
        PlainTable table = new PlainTable(Text.of("figures.product"), Text.of(key + ".count"), Text.of("figures.proposed"));
        most.forEach(u -> table.row(shop.designer().catalogue().product(u.sku()).map(Product::name).orElse(u.sku()), String.valueOf(what.applyAsInt(u)), String.valueOf(u.proposed())));
        section.add(table);
        return section;
    }

    private interface Table {
        List<List<String>> rows();
    }

    private static Anchor csv(String file, String key, Table table) {
        Language language = Language.now();
        Anchor link = new Anchor(DownloadHandler.fromInputStream(event -> {
            byte[] bytes = Text.in(language, () -> text(table.rows())).getBytes(StandardCharsets.UTF_8);
            return new DownloadResponse(new ByteArrayInputStream(bytes), file, "text/csv;charset=UTF-8", bytes.length);
        }), Text.of(key));
        link.getElement().setAttribute("download", true);
        link.addClassNames("button", "quiet");
        return link;
    }

    private static String text(List<List<String>> rows) {
        try {
            return new CsvMapper().writer(CsvSchema.emptySchema()).writeValueAsString(rows);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** For other programs: the columns' names, days and numbers are the same in every language. */
    private static List<List<String>> days(Figures figures) {
        List<List<String>> rows = new ArrayList<>(List.of(List.of("day", "consultations", "planned", "clashed", "quoted", "taken", "collected", "sum")));
        figures.days().forEach(d -> rows.add(List.of(d.day().toString(), String.valueOf(d.consultations()), String.valueOf(d.planned()), String.valueOf(d.clashed()),
                String.valueOf(d.quoted()), String.valueOf(d.taken()), String.valueOf(d.collected()), plain(d.sum()))));
        return rows;
    }

    private List<List<String>> products(Figures figures) {
        List<List<String>> rows = new ArrayList<>(List.of(List.of("sku", "name", "proposed", "chosen", "swappedOut", "blocked")));
        figures.products().forEach(u -> rows.add(List.of(u.sku(), shop.designer().catalogue().product(u.sku()).map(Product::name).orElse(""), String.valueOf(u.proposed()),
                String.valueOf(u.chosen()), String.valueOf(u.swappedOut()), String.valueOf(u.blocked()))));
        return rows;
    }

    private static String plain(BigDecimal sum) {
        return sum.setScale(2, java.math.RoundingMode.HALF_UP).toPlainString();
    }
}
