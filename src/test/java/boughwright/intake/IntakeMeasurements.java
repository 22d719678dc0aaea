package boughwright.intake;

import static boughwright.intake.IntakeFixture.LOOKS;
import static boughwright.intake.IntakeFixture.USD;

import boughwright.catalogue.CatalogueRows;
import boughwright.catalogue.Gtin;
import boughwright.catalogue.Product;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Prints how fast catalogue files are read and written, and what heap that takes, in a process of its own of at most 300 MB:
 * {@code mvn -q test-compile exec:exec@measure-intake}. Not a test.
 */
final class IntakeMeasurements {

    private static final int RUNS = 5;

    private IntakeMeasurements() {
    }

    /** Does something once. */
    private interface Work {
        void run() throws IOException;
    }

    public static void main(String[] none) throws IOException {
        Locale.setDefault(Locale.US);
        System.out.printf("heap at most %d MB, %d cores%n", Runtime.getRuntime().maxMemory() >> 20, Runtime.getRuntime().availableProcessors());
        Path folder = Files.createTempDirectory("measured");
        Path csv = written(folder, Format.CSV, 50_000);
        Path xlsx = written(folder, Format.XLSX, 20_000);
        Path large = written(folder, Format.XLSX, 50_000);
        Path json = written(folder, Format.JSON, 50_000);

        for (Path file : List.of(csv, xlsx, large, json)) {
            time("recognise, guess and read " + what(file), () -> require(read(file).faultless()));
        }
        Path stock = folder.resolve("stock-200000.csv");
        Files.write(stock, (Iterable<String>) () -> stockLines(200_000).iterator());
        time("read stock of " + what(stock), () -> require(stock(stock).rows().size() == 200_000));
        Path faulty = folder.resolve("faulty-50000.csv");
        Files.write(faulty, (Iterable<String>) () -> stockLines(50_000).map(line -> line.replaceFirst(",(\\d)", ",x$1")).iterator());
        time("read " + what(faulty) + " with a fault in each row", () -> require(stock(faulty).allFaults() == 50_000));

        Delivery.Read read = read(csv);
        IntakeFile file = IntakeFixture.opened(csv);
        time("mark a copy of " + what(csv), () -> MarkedCopy.write(file, read.faults(), OutputStream.nullOutputStream()));
        List<Product> shelf = read.products();
        for (Format format : Format.values()) {
            time("write 50,000 products as " + format.word(), () -> CatalogueFile.write(format, shelf, OutputStream.nullOutputStream()));
        }
        for (Path each : List.of(csv, xlsx, large, json, stock, faulty, folder)) {
            Files.delete(each);
        }
    }

    private static String what(Path file) throws IOException {
        return file.getFileName() + " (" + Math.round(Files.size(file) / 1e5) / 10.0 + " MB)";
    }

    private static Delivery.Read read(Path stored) {
        return IntakeFixture.read(IntakeFixture.opened(stored), Kind.WHOLE);
    }

    private static Delivery.Read stock(Path stored) {
        return IntakeFixture.read(IntakeFixture.opened(stored), Kind.STOCK);
    }

    private static Stream<String> stockLines(int rows) {
        return IntStream.rangeClosed(0, rows).mapToObj(i -> i == 0 ? "Item no,Qty on hand" : "SKU-" + i + "," + i % 500);
    }

    private static Path written(Path folder, Format format, int rows) throws IOException {
        Path file = folder.resolve("whole-" + rows + "." + format.extension());
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            CatalogueFile.write(format, products(rows, 0), out);
        }
        return file;
    }

    /** The season over and over, each product with a SKU, a GTIN, a name and a stock of its own. */
    private static List<Product> products(int count, int more) {
        List<Product> season = IntakeFixture.season();
        CatalogueRows rows = new CatalogueRows(LOOKS, USD);
        List<Product> products = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            String[] cells = CatalogueRows.cells(season.get(i % season.size())).toArray(String[]::new);
            cells[0] = String.format(Locale.ROOT, "%s-%05d", cells[0], i);
            String twelve = "02" + String.format(Locale.ROOT, "%010d", i);
            cells[1] = Gtin.within("0" + twelve + "0");
            cells[2] = cells[2] + ", " + i;
            cells[CatalogueRows.COLUMNS.indexOf("stock")] = String.valueOf(i % 400 + more);
            products.add(rows.product(1, CatalogueRows.COLUMNS, cells, new ArrayList<>()).orElseThrow());
        }
        return products;
    }

    /** Times by the clock, and of the processor alone, which a busy machine lengthens less. */
    private static void time(String what, Work work) throws IOException {
        long[] clock = new long[RUNS];
        long[] busy = new long[RUNS];
        long peak = 0;
        for (int run = 0; run < RUNS; run++) {
            System.gc();
            heap().forEach(MemoryPoolMXBean::resetPeakUsage);
            long begin = System.nanoTime();
            long worked = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            work.run();
            busy[run] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - worked) / 1_000_000;
            clock[run] = (System.nanoTime() - begin) / 1_000_000;
            peak = Math.max(peak, heap().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum());
        }
        System.out.printf("%s: first %d ms (processor %d), then %d to %d ms (processor %d to %d), heap at its peak %d MB%n", what, clock[0], busy[0],
                least(clock), most(clock), least(busy), most(busy), peak >> 20);
    }

    private static long least(long[] millis) {
        return Arrays.stream(millis, 1, millis.length).min().orElseThrow();
    }

    private static long most(long[] millis) {
        return Arrays.stream(millis, 1, millis.length).max().orElseThrow();
    }

    private static Stream<MemoryPoolMXBean> heap() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP);
    }

    private static void require(boolean holds) {
        if (!holds) {
            throw new AssertionError("measured something else");
        }
    }
}
