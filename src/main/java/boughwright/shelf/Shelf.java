package boughwright.shelf;

import boughwright.catalogue.Catalogue;
import boughwright.catalogue.CatalogueFault;
import boughwright.catalogue.Product;
import boughwright.intake.Delivery;
import boughwright.intake.GoodRow;
import boughwright.intake.Kind;
import boughwright.text.Text;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/**
 * The shop's products as they are now, and everything that can be done to them. Each change is checked as a whole, kept as a whole or not
 * at all, and then told to whoever listens; a catalogue that somebody has in hand never changes under him. What a method has kept survives
 * the loss of the process. Several kiosks may share one database: each change is worked out from what is kept at that moment, so none
 * overwrites what another kiosk has changed beside it, and what another one changes is served here within some seconds. Safe for several
 * threads.
 */
@Component
public class Shelf {

    private static final Logger LOG = LoggerFactory.getLogger(Shelf.class);

    static final String SKU = "sku";
    static final String GTIN = "gtin";
    static final String STOCK = "stock";
    static final String PRICE = "price";

    private final ShelfBooks books;
    private final List<Consumer<Catalogue>> listeners = new ArrayList<>();
    private volatile State state = new State(new TreeMap<>(), new Catalogue(List.of()));
    private final AtomicLong promises = new AtomicLong();
    private final Object leftLock = new Object();
    private volatile Left left;
    private volatile RowCheck check;
    /** A count of changes up to which {@code state} knows all; it may know more. */
    private volatile long seen;

    Shelf(ShelfBooks books) {
        this.books = books;
    }

    /** All rows by SKU, those that are gone too, and what they make together. */
    private record State(SortedMap<String, Row> rows, Catalogue catalogue) {

        static State of(SortedMap<String, Row> rows) {
            return new State(rows, catalogue(rows, UnaryOperator.identity()));
        }

        /** What the rows make together when so many packs of them are promised to somebody. */
        Catalogue less(Map<String, Integer> promised) {
            return catalogue(rows, p -> promised.getOrDefault(p.sku(), 0) > 0 ? p.withStock(Math.max(0, p.stock() - promised.get(p.sku()))) : p);
        }

        private static Catalogue catalogue(SortedMap<String, Row> rows, UnaryOperator<Product> each) {
            return new Catalogue(rows.values().stream().map(Row::product).map(each).toList(),
                    rows.values().stream().filter(Row::gone).map(r -> r.product().sku()).collect(Collectors.toSet()));
        }
    }

    /** What is left of a state when promised packs are taken off. @param promised packs by SKU, as they were at {@code version} at the latest */
    private record Left(State of, long version, Map<String, Integer> promised, Catalogue catalogue, Map<Map<String, Integer>, Catalogue> withOwn) {

        /** Those who have been promised something come back to it: a counter page asks at each touch. */
        private static final int MOST = 16;

        Left(State of, long version, Map<String, Integer> promised) {
            this(of, version, promised, promised.isEmpty() ? of.catalogue() : of.less(promised), new HashMap<>());
        }

        Catalogue catalogue(Map<String, Integer> own) {
            synchronized (withOwn) {
                if (withOwn.size() >= MOST && !withOwn.containsKey(own)) {
                    withOwn.clear();
                }
                return withOwn.computeIfAbsent(Map.copyOf(own), mine -> {
                    Map<String, Integer> others = new HashMap<>(promised);
                    mine.forEach((sku, packs) -> others.merge(sku, -packs, (a, b) -> Math.max(0, a + b)));
                    return of.less(others);
                });
            }
        }
    }

    /** What came of a change. */
    public sealed interface Outcome {

        /** @param products how many were touched */
        record Done(ShelfEvent event, int products) implements Outcome {
        }

        /** Everything is as it was. */
        record Refused(List<CatalogueFault> faults) implements Outcome {
        }

        /** Everything is so already. */
        record Nothing() implements Outcome {
        }
    }

    /**
     * Opens what is kept. The file that the kiosk is started with stocks an empty shelf, and one that nobody has touched since; once
     * staff have changed anything, the shelf is theirs.
     *
     * @param looks tags that a product may name, asked for at each change
     * @param currency of all prices
     * @param csv the text of the file
     * @return what is wrong with the file, when there is nothing else to sell
     */
    public synchronized List<CatalogueFault> open(Supplier<Set<String>> looks, Currency currency, String csv) {
        check = new RowCheck(looks, currency);
        books.whenChangedElsewhere(this::readAgain);
        // Two kiosks that start on an empty database at once must not both stock it.
        return books.alone(version -> opened(version, csv));
    }

    private List<CatalogueFault> opened(long version, String csv) {
        String source = digest(csv);
        State kept = since(-1, new State(new TreeMap<>(), new Catalogue(List.of())));
        books.whenCommitted(() -> serve(kept, version));
        if (!kept.rows().isEmpty()) {
            books.countAll(kept.rows());
            if (books.sources().contains(source)) {
                return List.of();
            }
            if (books.touched()) {
                LOG.info(Text.of("shelf.folder.kept"));
                return List.of();
            }
        }
        RowCheck.Checked checked = check.text(csv);
        if (!checked.faults().isEmpty()) {
            if (!kept.rows().isEmpty()) {
                checked.faults().forEach(f -> LOG.error(f.sentence()));
                return List.of();
            }
            return checked.faults();
        }
        SortedMap<Integer, Product> lines = new TreeMap<>();
        checked.rows().forEach(p -> lines.put(lines.size() + 1, p));
        make(new Now(version, kept), planWhole(kept, lines, Set.of(), false).changes(), ShelfEvent.Kind.FOLDER, "", "", source);
        return List.of();
    }

    /** What is kept at the moment of a change, with the change's count. */
    private record Now(long version, State state) {
    }

    /**
     * Works a change out from what is kept, alone among all threads and kiosks, and serves what came of it once that is kept. No lock of
     * this object is held meanwhile: who waits for the database must not keep others from ending.
     */
    private Outcome change(Function<Now, Outcome> change) {
        return books.alone(version -> {
            // In this order: the state may be newer than the count that is read, and never older.
            long known = seen;
            State served = state;
            return change.apply(new Now(version, known == version - 1 ? served : since(known, served)));
        });
    }

    private synchronized void readAgain() {
        long version = books.version();
        serve(since(seen, state), version);
    }

    /** A state and what was written after the change of a count. */
    private State since(long version, State before) {
        List<ShelfBooks.KeptRow> written = books.rowsSince(version);
        if (written.isEmpty()) {
            return before;
        }
        SortedMap<String, Row> rows = new TreeMap<>(before.rows());
        rows.putAll(readable(written));
        return State.of(rows);
    }

    /** What was committed later serves, in whichever order it is told. */
    private synchronized void serve(State next, long version) {
        if (version < seen) {
            return;
        }
        boolean changed = next != state;
        state = next;
        seen = version;
        if (changed) {
            listeners.forEach(l -> l.accept(catalogue()));
        }
    }

    /** What cannot be read any more stays in the books and is told, and is not sold. */
    private SortedMap<String, Row> readable(List<ShelfBooks.KeptRow> kept) {
        RowCheck.Checked checked = check.rows(kept.stream().map(ShelfBooks.KeptRow::cells).toList());
        checked.faults().forEach(f -> LOG.error(Text.of("shelf.unreadable", kept.get(f.line() - 1).cells().getOrDefault(SKU, ""), f.column(), f.mend())));
        Set<String> gone = kept.stream().filter(ShelfBooks.KeptRow::gone).map(k -> k.cells().getOrDefault(SKU, "")).collect(Collectors.toSet());
        SortedMap<String, Row> rows = new TreeMap<>();
        checked.rows().forEach(p -> rows.put(p.sku(), new Row(p, gone.contains(p.sku()))));
        return rows;
    }

    /** What can be had at this moment: what is on hand less what others have been promised. The same one until something changes. */
    public Catalogue catalogue() {
        return left().catalogue();
    }

    /**
     * The same for somebody who has been promised some of it already.
     *
     * @param own packs by SKU
     */
    public Catalogue catalogue(Map<String, Integer> own) {
        Left now = left();
        return own.isEmpty() ? now.catalogue() : now.catalogue(own);
    }

    private Left left() {
        Left now = left;
        if (upToDate(now)) {
            return now;
        }
        // A lock of its own: whoever is told of a change holds other locks, and asks for the catalogue.
        synchronized (leftLock) {
            if (!upToDate(left)) {
                long version = promises.get();
                State of = state;
                left = new Left(of, version, books.promised());
            }
            return left;
        }
    }

    private boolean upToDate(Left known) {
        return known != null && known.of() == state && known.version() == promises.get();
    }

    /** Packs have been promised, given back or handed over, here or on another kiosk. */
    void promisesChanged() {
        promises.incrementAndGet();
    }

    /**
     * Packs leave the shop, within the transaction of the caller.
     *
     * @param version of this change: the caller has counted the topic {@link ShelfBooks#TOPIC} up before he changed anything
     */
    void sold(long version, Map<String, Integer> packs) {
        books.sold(version, packs);
        books.whenCommitted(this::readAgain);
    }

    /** The cells of a product by column, as they are kept; empty when nobody knows it. */
    public Map<String, String> cells(String sku) {
        Row row = state.rows().get(sku);
        return row == null ? Map.of() : row.cells();
    }

    /** Whether the shop sells it now. */
    public boolean sells(String sku) {
        Row row = state.rows().get(sku);
        return row != null && !row.gone();
    }

    /** Calls after each change, on the thread that made it, or on one of its own when another kiosk has made it. */
    public synchronized void whenChanged(Consumer<Catalogue> listener) {
        listeners.add(listener);
    }

    /** When something was done, by the clock of the shop. */
    public String moment(ShelfEvent event) {
        return books.moment(event);
    }

    /** The newest first. */
    public List<ShelfEvent> events(int most) {
        return books.events(most);
    }

    /** What an event did, product by product, in the order of SKUs. */
    public List<RowChange> changes(int event) {
        return books.changes(event);
    }

    /** Whether staff have brought in a whole catalogue of their own. */
    public boolean ownGoods() {
        return books.ownGoods();
    }

    /** What can be taken back now: the newest event that staff made and that is not undone. */
    public Optional<ShelfEvent> undoable() {
        return books.undoable();
    }

    /**
     * What a delivery would do; nothing is done.
     *
     * @param keepOthers whether products that a whole file does not name stay; those of its faulty rows stay in any case
     */
    public Planned plan(Delivery.Read delivery, boolean keepOthers) {
        return plan(state, delivery, keepOthers);
    }

    private static Planned plan(State now, Delivery.Read delivery, boolean keepOthers) {
        return switch (delivery.kind()) {
            case WHOLE -> planWhole(now, products(delivery), delivery.faultySkus(), keepOthers);
            case STOCK, PRICE -> planCells(now, cells(delivery), delivery.kind() == Kind.STOCK ? STOCK : PRICE);
        };
    }

    private static SortedMap<Integer, Product> products(Delivery.Read delivery) {
        SortedMap<Integer, Product> lines = new TreeMap<>();
        delivery.rows().forEach(r -> lines.put(r.line(), ((GoodRow.Whole) r).product()));
        return lines;
    }

    private static SortedMap<Integer, Map<String, String>> cells(Delivery.Read delivery) {
        SortedMap<Integer, Map<String, String>> lines = new TreeMap<>();
        for (GoodRow row : delivery.rows()) {
            Map<String, String> cells = new HashMap<>();
            for (int i = 0; i < row.cells().size(); i++) {
                cells.put(delivery.kind().columns().get(i), row.cells().get(i));
            }
            lines.put(row.line(), cells);
        }
        return lines;
    }

    /**
     * What a delivery would do.
     *
     * @param changes in the order of SKUs
     * @param unchanged how many products are already as it says
     * @param faults lines that this shelf cannot take
     */
    public record Planned(List<RowChange> changes, int unchanged, List<CatalogueFault> faults) {
    }

    /** Does what {@link #plan} says; when it has faults, nothing, or all but the faulty lines when {@code goodOnly}. */
    public Outcome bring(Delivery.Read delivery, boolean keepOthers, boolean goodOnly, String file, String author) {
        return change(now -> bring(now, delivery, keepOthers, goodOnly, file, author));
    }

    private Outcome bring(Now now, Delivery.Read delivery, boolean keepOthers, boolean goodOnly, String file, String author) {
        Planned planned = plan(now.state(), delivery, keepOthers);
        if (!goodOnly && !(planned.faults().isEmpty() && delivery.faultless())) {
            return new Outcome.Refused(planned.faults());
        }
        return make(now, planned.changes(), ShelfEvent.Kind.valueOf(delivery.kind().name()), file, author);
    }

    /** Changes one cell. */
    public Outcome edit(String sku, String column, String text, String author) {
        return edit(List.of(sku), column, was -> text, ShelfEvent.Kind.EDIT, sku, author);
    }

    /** Changes one column of many products, each from what it was. */
    public Outcome editAll(Collection<String> skus, String column, UnaryOperator<String> change, String author) {
        return edit(skus, column, change, ShelfEvent.Kind.BULK, column, author);
    }

    /** Changes several cells of one product together. */
    public Outcome edit(String sku, Map<String, String> texts, String author) {
        return change(now -> {
            Row row = now.state().rows().get(sku);
            if (row == null || row.gone()) {
                return new Outcome.Nothing();
            }
            Map<String, String> after = new HashMap<>(row.cells());
            after.putAll(texts);
            after.values().removeIf(String::isBlank);
            return make(now, changes(now.state(), List.of(after)), ShelfEvent.Kind.EDIT, sku, author);
        });
    }

    /** Puts one product on the shelf. A SKU that is sold already is a fault; one that was sold once comes back. */
    public Outcome add(Map<String, String> cells, String author) {
        Map<String, String> bare = new HashMap<>(cells);
        bare.replaceAll((column, text) -> text.strip());
        bare.values().removeIf(String::isEmpty);
        String sku = bare.getOrDefault(SKU, "");
        return change(now -> sold(now.state(), sku).isEmpty()
                ? make(now, List.of(new RowChange(sku, Map.of(), bare)), ShelfEvent.Kind.EDIT, sku, author)
                : new Outcome.Refused(List.of(new CatalogueFault(1, SKU, sku, Text.of("shelf.sku-taken")))));
    }

    /** Takes products out of the range. Who owns some can still build on them. */
    public Outcome takeOff(Collection<String> skus, String author) {
        return change(now -> {
            List<RowChange> going = skus.stream().filter(sku -> !sold(now.state(), sku).isEmpty()).sorted()
                    .map(sku -> new RowChange(sku, sold(now.state(), sku), Map.of())).toList();
            return make(now, going, going.size() == 1 ? ShelfEvent.Kind.EDIT : ShelfEvent.Kind.BULK, going.size() == 1 ? going.get(0).sku() : "", author);
        });
    }

    private Outcome edit(Collection<String> skus, String column, UnaryOperator<String> change, ShelfEvent.Kind kind, String words, String author) {
        return change(now -> {
            List<Map<String, String>> after = new ArrayList<>();
            for (String sku : skus) {
                Row row = now.state().rows().get(sku);
                if (row != null && !row.gone()) {
                    after.add(with(row.cells(), column, change.apply(row.cells().getOrDefault(column, ""))));
                }
            }
            return make(now, changes(now.state(), after), kind, words, author);
        });
    }

    private static Map<String, String> with(Map<String, String> cells, String column, String text) {
        Map<String, String> changed = new HashMap<>(cells);
        changed.put(column, text.strip());
        changed.values().removeIf(String::isEmpty);
        return changed;
    }

    /** Rows that take the place of those of the same SKU. */
    private static List<RowChange> changes(State now, List<Map<String, String>> after) {
        return after.stream().map(cells -> new RowChange(cells.getOrDefault(SKU, ""), sold(now, cells.getOrDefault(SKU, "")), cells))
                .filter(c -> !c.before().equals(c.after())).toList();
    }

    /** The cells of what is sold; empty for what is not, or not any more. */
    private static Map<String, String> sold(State now, String sku) {
        Row row = now.rows().get(sku);
        return row == null || row.gone() ? Map.of() : row.cells();
    }

    private static Planned planWhole(State now, SortedMap<Integer, Product> delivered, Set<String> leave, boolean keepOthers) {
        SortedMap<String, RowChange> changes = new TreeMap<>();
        Map<String, String> ownerOfGtin = new HashMap<>();
        List<CatalogueFault> faults = new ArrayList<>();
        Set<String> named = delivered.values().stream().map(Product::sku).collect(Collectors.toSet());
        List<Row> others = now.rows().values().stream().filter(r -> !r.gone() && !named.contains(r.product().sku())).toList();
        others.stream().filter(r -> keepOthers || leave.contains(r.product().sku())).forEach(r -> ownerOfGtin.put(r.product().gtin(), r.product().sku()));
        int same = 0;
        for (Map.Entry<Integer, Product> line : delivered.entrySet()) {
            Product product = line.getValue();
            String owner = ownerOfGtin.putIfAbsent(product.gtin(), product.sku());
            Row row = now.rows().get(product.sku());
            if (owner != null) {
                faults.add(new CatalogueFault(line.getKey(), GTIN, product.gtin(), Text.of("shelf.gtin-of-other", owner)));
            } else if (row != null && !row.gone() && row.product().equals(product)) {
                same++;
            } else {
                changes.put(product.sku(), new RowChange(product.sku(), sold(now, product.sku()), RowCheck.cells(product)));
            }
        }
        if (!keepOthers) {
            others.stream().filter(r -> !leave.contains(r.product().sku()))
                    .forEach(r -> changes.put(r.product().sku(), new RowChange(r.product().sku(), r.cells(), Map.of())));
        }
        return new Planned(List.copyOf(changes.values()), same, faults);
    }

    private static Planned planCells(State now, SortedMap<Integer, Map<String, String>> delivered, String column) {
        Map<String, String> skuOfGtin = now.rows().values().stream().filter(r -> !r.gone())
                .collect(Collectors.toMap(r -> r.product().gtin(), r -> r.product().sku(), (a, b) -> a));
        SortedMap<String, RowChange> changes = new TreeMap<>();
        List<CatalogueFault> faults = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        int same = 0;
        for (Map.Entry<Integer, Map<String, String>> line : delivered.entrySet()) {
            Map<String, String> cells = line.getValue();
            String sku = cells.getOrDefault(SKU, "");
            String gtin = cells.getOrDefault(GTIN, "");
            String named = sku.isEmpty() ? skuOfGtin.getOrDefault(gtin, "") : sku;
            Map<String, String> before = sold(now, named);
            Integer earlier = before.isEmpty() ? null : seen.putIfAbsent(named, line.getKey());
            if (earlier != null) {
                faults.add(new CatalogueFault(line.getKey(), SKU, named, Text.of("catalogue.twice", String.valueOf(earlier))));
            } else if (before.isEmpty()) {
                faults.add(new CatalogueFault(line.getKey(), sku.isEmpty() ? GTIN : SKU, sku.isEmpty() ? gtin : sku, Text.of("shelf.unknown")));
            } else if (!sku.isEmpty() && !gtin.isEmpty() && !gtin.equals(before.get(GTIN))) {
                faults.add(new CatalogueFault(line.getKey(), GTIN, gtin, Text.of("shelf.other-gtin", before.get(GTIN))));
            } else {
                RowChange change = new RowChange(named, before, with(before, column, cells.get(column)));
                if (change.before().equals(change.after())) {
                    same++;
                } else {
                    changes.put(named, change);
                }
            }
        }
        return new Planned(List.copyOf(changes.values()), same, faults);
    }

    /**
     * Takes the newest event back that {@link #undoable} names. What has changed again since, as stock does, stays as it is now.
     *
     * @return how many cells stayed is told in the event's words
     */
    public Outcome undo(int event, String author) {
        return change(now -> undo(now, event, author));
    }

    private Outcome undo(Now at, int event, String author) {
        Optional<ShelfEvent> newest = undoable().filter(e -> e.id() == event);
        if (newest.isEmpty()) {
            return new Outcome.Nothing();
        }
        List<RowChange> back = new ArrayList<>();
        int stayed = 0;
        for (RowChange was : changes(event)) {
            Map<String, String> now = sold(at.state(), was.sku());
            Map<String, String> then = new HashMap<>(was.before());
            if (!was.comes() && !was.goes()) {
                then = new HashMap<>(now);
                for (String column : was.columns()) {
                    if (now.getOrDefault(column, "").equals(was.after().getOrDefault(column, ""))) {
                        then.put(column, was.before().getOrDefault(column, ""));
                    } else {
                        stayed++;
                    }
                }
                then.values().removeIf(String::isEmpty);
            }
            if (!now.equals(then)) {
                back.add(new RowChange(was.sku(), now, then));
            }
        }
        Outcome outcome = make(at, back, ShelfEvent.Kind.UNDO, Text.of(stayed == 0 ? "shelf.undo.words" : "shelf.undo.words.stayed", event, stayed), author);
        if (!(outcome instanceof Outcome.Refused)) {
            books.undone(event);
        }
        return outcome;
    }

    /** Stock and prices as the till knows them, all of them or none. @param lines cells by place, from 1 */
    Outcome till(SortedMap<Integer, Map<String, String>> lines, String author) {
        return change(now -> till(now, lines, author));
    }

    private Outcome till(Now now, SortedMap<Integer, Map<String, String>> lines, String author) {
        List<CatalogueFault> faults = new ArrayList<>();
        lines.forEach((line, cells) -> check.till(line, cells, faults));
        if (!faults.isEmpty()) {
            return new Outcome.Refused(faults);
        }
        Planned stock = planCells(now.state(), holding(lines, STOCK), STOCK);
        Planned price = planCells(now.state(), holding(lines, PRICE), PRICE);
        faults.addAll(stock.faults());
        price.faults().stream().filter(f -> !faults.contains(f)).forEach(faults::add);
        if (!faults.isEmpty()) {
            return new Outcome.Refused(faults);
        }
        SortedMap<String, RowChange> both = new TreeMap<>();
        stock.changes().forEach(c -> both.put(c.sku(), c));
        price.changes().forEach(c -> both.merge(c.sku(), c, (s, p) -> new RowChange(s.sku(), s.before(), with(s.after(), PRICE, p.after().get(PRICE)))));
        return make(now, List.copyOf(both.values()), ShelfEvent.Kind.TILL, "", author);
    }

    private static SortedMap<Integer, Map<String, String>> holding(SortedMap<Integer, Map<String, String>> lines, String column) {
        SortedMap<Integer, Map<String, String>> holding = new TreeMap<>(lines);
        holding.values().removeIf(c -> !c.containsKey(column));
        return holding;
    }

    private Outcome make(Now now, List<RowChange> changes, ShelfEvent.Kind kind, String words, String author) {
        return make(now, changes, kind, words, author, "");
    }

    /** Checks, keeps, and only then serves; with a fault nothing has changed. */
    private Outcome make(Now now, List<RowChange> wanted, ShelfEvent.Kind kind, String words, String author, String source) {
        // Nothing of what leaves the range is in stock.
        RowCheck.Checked checked = check.rows(wanted.stream().map(c -> c.goes() ? with(c.before(), STOCK, "0") : c.after()).toList());
        if (!checked.faults().isEmpty()) {
            return new Outcome.Refused(checked.faults());
        }
        SortedMap<String, Row> next = new TreeMap<>(now.state().rows());
        List<RowChange> changes = new ArrayList<>();
        Iterator<Product> products = checked.rows().iterator();
        for (RowChange change : wanted) {
            Row row = new Row(products.next(), change.goes());
            RowChange done = new RowChange(change.sku(), change.before(), change.goes() ? Map.of() : row.cells());
            if (!done.before().equals(done.after())) {
                next.put(change.sku(), row);
                changes.add(done);
            }
        }
        if (changes.isEmpty()) {
            return new Outcome.Nothing();
        }
        List<CatalogueFault> shared = sharedNumbers(changes, next);
        if (!shared.isEmpty()) {
            return new Outcome.Refused(shared);
        }
        Map<String, Row> touched = new LinkedHashMap<>();
        changes.forEach(c -> touched.put(c.sku(), next.get(c.sku())));
        ShelfEvent event = books.keep(now.version(), now.state().rows().keySet(), touched, changes, kind, words, author, source);
        State made = State.of(next);
        books.whenCommitted(() -> serve(made, now.version()));
        return new Outcome.Done(event, changes.size());
    }

    /** No two products on sale share a GTIN. */
    private static List<CatalogueFault> sharedNumbers(List<RowChange> changes, SortedMap<String, Row> next) {
        Map<String, List<String>> owners = new HashMap<>();
        next.values().stream().filter(r -> !r.gone()).forEach(r -> owners.computeIfAbsent(r.product().gtin(), g -> new ArrayList<>(1)).add(r.product().sku()));
        List<CatalogueFault> faults = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            RowChange change = changes.get(i);
            String gtin = change.after().getOrDefault(GTIN, "");
            int line = i + 1;
            owners.getOrDefault(gtin, List.of()).stream().filter(sku -> !sku.equals(change.sku())).findFirst()
                    .ifPresent(sku -> faults.add(new CatalogueFault(line, GTIN, gtin, Text.of("shelf.gtin-of-other", sku))));
        }
        return faults;
    }

    /** Products on sale, in the order of SKUs. */
    public List<Product> onSale() {
        State now = state;
        return now.rows().values().stream().filter(r -> !r.gone()).map(Row::product).toList();
    }

    static String digest(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
