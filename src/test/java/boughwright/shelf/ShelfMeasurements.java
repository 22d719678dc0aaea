package boughwright.shelf;

import boughwright.catalogue.CatalogueReader;
import boughwright.catalogue.CatalogueReading;
import boughwright.catalogue.CatalogueRows;
import boughwright.catalogue.Product;
import boughwright.catalogue.ProductSearch;
import boughwright.catalogue.Traits.Family;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Level;
import boughwright.catalogue.Traits.Texture;
import boughwright.colour.Srgb;
import boughwright.intake.CatalogueFile;
import boughwright.intake.ColumnGuess;
import boughwright.intake.Delivery;
import boughwright.intake.Format;
import boughwright.intake.Intake;
import boughwright.intake.IntakeFile;
import boughwright.intake.Kind;
import boughwright.intake.Mapping;
import boughwright.intake.Opening;
import boughwright.intake.Progress;
import boughwright.needs.Role;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Prints how long the shelf takes to be searched, changed and filled on this machine; on demand, copied to docs/performance.md. */
public final class ShelfMeasurements {

    private static final Currency USD = Currency.getInstance("USD");
    private static final int LARGE = 10_000;
    private static final int HUGE = 50_000;

    private ShelfMeasurements() {
    }

    public static void main(String[] args) throws IOException {
        System.out.println("processors " + Runtime.getRuntime().availableProcessors() + ", java " + System.getProperty("java.version"));
        List<Product> season = ((CatalogueReading.Read) new CatalogueReader(looks(), USD).read(Files.readString(Path.of("catalogue-samples/season.csv")))).catalogue()
                .products();
        searches(many(season, LARGE));
        changes(season);
        System.exit(0);
    }

    private static Set<String> looks() throws IOException {
        return boughwright.rulebook.Edition.read(Files.readString(Path.of("rules/edition.json"))).choices().looks().stream().map(l -> l.id())
                .collect(java.util.stream.Collectors.toSet());
    }

    /** The season again and again under other numbers. */
    private static List<Product> many(List<Product> season, int count) {
        CatalogueRows rows = new CatalogueRows(season.stream().flatMap(p -> p.looks().stream()).collect(java.util.stream.Collectors.toSet()), USD);
        List<Product> many = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<String> cells = new ArrayList<>(CatalogueRows.cells(season.get(i % season.size())));
            cells.set(0, "M-" + i);
            cells.set(1, gtin(i));
            many.add(rows.product(i + 1, CatalogueRows.COLUMNS, cells.toArray(String[]::new), new ArrayList<>()).orElseThrow());
        }
        return many;
    }

    private static String gtin(int number) {
        String twelve = String.format(Locale.ROOT, "29%010d", number);
        int sum = 0;
        for (int i = 0; i < 12; i++) {
            sum += (twelve.charAt(i) - '0') * (i % 2 == 0 ? 1 : 3);
        }
        return twelve + (10 - sum % 10) % 10;
    }

    private static void searches(List<Product> products) {
        Map<String, ProductSearch> searches = new LinkedHashMap<>();
        searches.put("text", ProductSearch.ALL.withText("velvet ribbon"));
        searches.put("role", ProductSearch.ALL.withRole(Optional.of(Role.SPRAY)));
        searches.put("look", ProductSearch.ALL.withLook("woodland"));
        searches.put("family", ProductSearch.ALL.withFamily(Optional.of(Family.GOLD)));
        searches.put("texture", ProductSearch.ALL.withTexture(Optional.of(Texture.SMOOTH)));
        searches.put("finish", ProductSearch.ALL.withFinish(Optional.of(Finish.MATTE)));
        searches.put("level", ProductSearch.ALL.withLevel(Optional.of(Level.VALUE)));
        searches.put("stock", ProductSearch.ALL.withStock(ProductSearch.Stock.LOW));
        searches.put("near a colour", ProductSearch.ALL.withNear(Srgb.read("#5e2750")));
        searches.put("by name", ProductSearch.ALL.withOrder(ProductSearch.Order.NAME));
        searches.forEach((name, search) -> {
            double[] millis = new double[220];
            for (int i = 0; i < millis.length; i++) {
                long start = System.nanoTime();
                search.in(products);
                millis[i] = (System.nanoTime() - start) / 1e6;
            }
            report(products.size() + " products, filter " + name, Arrays.copyOfRange(millis, 20, millis.length));
        });
    }

    private static void changes(List<Product> season) throws IOException {
        ShelfFixture fixture = ShelfFixture.onDisk(Files.createTempDirectory("shelf"));
        fixture.openWith(looks());
        for (int count : new int[] {LARGE, HUGE}) {
            Path file = Files.createTempFile("many", ".csv");
            try (OutputStream out = Files.newOutputStream(file)) {
                CatalogueFile.write(Format.CSV, many(season, count), out);
            }
            IntakeFile opened = ((Opening.Opened) IntakeFile.of("many.csv", file)).file();
            Delivery.Read read = (Delivery.Read) Intake.read(opened, Kind.WHOLE, Mapping.of(ColumnGuess.of(opened, Kind.WHOLE)), looks(), USD, Progress.SILENT);
            time("plan of " + count + " rows", () -> fixture.shelf.plan(read, false));
            time("bring in " + count + " rows", () -> fixture.shelf.bring(read, false, false, "many.csv", "test"));
            double[] millis = new double[60];
            for (int i = 0; i < millis.length; i++) {
                String price = (5 + i) + ".25";
                long start = System.nanoTime();
                fixture.shelf.edit("M-" + i, "price", price, "test");
                millis[i] = (System.nanoTime() - start) / 1e6;
            }
            report("change of one cell among " + count, Arrays.copyOfRange(millis, 10, millis.length));
            SortedMap<Integer, Map<String, String>> lines = new TreeMap<>();
            for (int i = 0; i < 500; i++) {
                lines.put(i + 1, Map.of("sku", "M-" + i, "stock", "7"));
            }
            time("till call of 500 lines among " + count, () -> fixture.till.put("m" + count, "b", lines));
            time("take the file back", () -> {
                while (fixture.shelf.undoable().isPresent()) {
                    fixture.shelf.undo(fixture.shelf.undoable().get().id(), "test");
                }
            });
            Files.delete(file);
        }
    }

    private static void time(String what, Runnable work) {
        long start = System.nanoTime();
        work.run();
        System.out.printf(Locale.ENGLISH, "%-44s %8.0f ms%n", what, (System.nanoTime() - start) / 1e6);
    }

    private static void report(String what, double[] millis) {
        Arrays.sort(millis);
        System.out.printf(Locale.ENGLISH, "%-44s p50 %7.2f ms  p95 %7.2f ms%n", what, millis[millis.length / 2], millis[(int) (millis.length * 0.95)]);
    }
}
