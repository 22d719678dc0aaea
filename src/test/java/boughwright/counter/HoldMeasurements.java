package boughwright.counter;

import boughwright.storage.Databases;
import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;

/**
 * Prints what holding packs costs, on an H2 file as a shop has it and on PostgreSQL: how many attempts a second from 32 threads, each sent
 * twice with one key, whether what was granted and what is left add up, and how long a hold takes at 50 a second. On demand, never a part
 * of a build.
 */
public final class HoldMeasurements {

    private static final int HANDS = 32;
    private static final Duration DAY = Duration.ofDays(1);

    private HoldMeasurements() {
    }

    /** @param arguments how many attempts, 100,000 when nothing is said */
    public static void main(String[] arguments) throws Exception {
        int attempts = arguments.length == 0 ? 100_000 : Integer.parseInt(arguments[0]);
        Path folder = Files.createTempDirectory("holds");
        measure("H2, a file", new CounterFixture(file(folder)), attempts);
        measure("PostgreSQL", new CounterFixture(Databases.POSTGRESQL), attempts);
        try (Stream<Path> files = Files.list(folder)) {
            for (Path each : files.toList()) {
                Files.deleteIfExists(each);
            }
        }
        System.exit(0);
    }

    private static DataSource file(Path folder) {
        HikariConfig pool = new HikariConfig();
        pool.setJdbcUrl("jdbc:h2:file:" + folder.resolve("shop") + ";WRITE_DELAY=0;LOCK_TIMEOUT=10000");
        pool.setUsername("sa");
        pool.setMaximumPoolSize(HANDS);
        HikariDataSource source = new HikariDataSource(pool);
        Flyway.configure().dataSource(source).load().migrate();
        return source;
    }

    private static void measure(String name, CounterFixture shop, int attempts) throws Exception {
        rush(name, shop, attempts);
        steady(name, shop);
    }

    /** Everybody at once, for few products, until long after the last pack is promised. */
    private static void rush(String name, CounterFixture shop, int attempts) throws Exception {
        int products = 8;
        long stock = 0;
        for (int p = 0; p < products; p++) {
            stock += shop.onHand(shop.pack(p, 1));
        }
        List<Pack> packs = new ArrayList<>();
        for (int p = 0; p < products; p++) {
            packs.add(shop.pack(p, 1));
        }
        shop.transactions.run(() -> {
            for (int i = 0; i < attempts; i++) {
                shop.consultation("code-" + i);
            }
        });
        AtomicLong granted = new AtomicLong();
        AtomicLong again = new AtomicLong();
        AtomicLong refused = new AtomicLong();
        ExecutorService hands = Executors.newFixedThreadPool(HANDS);
        long begin = System.nanoTime();
        List<Future<?>> all = new ArrayList<>();
        for (int hand = 0; hand < HANDS; hand++) {
            int mine = hand;
            all.add(hands.submit(() -> {
                SplittableRandom random = new SplittableRandom(mine);
                for (int i = mine; i < attempts; i += HANDS) {
                    Pack pack = packs.get(random.nextInt(products));
                    String code = "code-" + i;
                    for (int tap = 0; tap < 2; tap++) {
                        Holding holding = shop.holds.hold(code, List.of(pack), DAY, "Ada", "wish-" + i);
                        if (holding instanceof Holding.Held held) {
                            (held.again() ? again : granted).incrementAndGet();
                        } else {
                            refused.incrementAndGet();
                        }
                    }
                }
                return null;
            }));
        }
        for (Future<?> each : all) {
            each.get();
        }
        hands.shutdown();
        double seconds = (System.nanoTime() - begin) / 1e9;
        long held = 0;
        long left = 0;
        for (int p = 0; p < products; p++) {
            held += shop.held(shop.pack(p, 1));
            left += shop.onHand(shop.pack(p, 1)) - shop.held(shop.pack(p, 1));
        }
        System.out.printf("%s: %d attempts, each twice, from %d threads: %.0f a second; granted %d, answered again %d, refused %d%n", name, attempts, HANDS, 2 * attempts / seconds,
                granted.get(), again.get(), refused.get());
        System.out.printf("  held %d + left %d = %d of %d in stock; products out of balance: %s; holds %d, deeds %d%n", held, left, held + left, stock, shop.unbalanced(),
                shop.database.sql("select count(*) from hold").query(Long.class).single(), shop.database.sql("select count(*) from deed").query(Long.class).single());
    }

    /** Whole kits of fifteen products, 50 a second for 40 seconds. */
    private static void steady(String name, CounterFixture shop) throws Exception {
        int holds = 2_000;
        List<Pack> kit = new ArrayList<>();
        for (int p = 20; p < 35; p++) {
            Pack pack = shop.pack(p, 1);
            shop.shelf.edit(pack.sku(), "stock", "5000", "Ada");
            kit.add(pack);
        }
        for (int i = 0; i < holds; i++) {
            shop.consultation("kit-" + i);
        }
        ScheduledExecutorService hands = Executors.newScheduledThreadPool(HANDS);
        ConcurrentLinkedQueue<Long> times = new ConcurrentLinkedQueue<>();
        List<Future<?>> all = Collections.synchronizedList(new ArrayList<>());
        for (int i = 0; i < holds; i++) {
            String code = "kit-" + i;
            all.add(hands.schedule(() -> {
                long from = System.nanoTime();
                if (!(shop.holds.hold(code, kit, DAY, "Ada", code) instanceof Holding.Held)) {
                    throw new IllegalStateException("not held");
                }
                times.add(System.nanoTime() - from);
                return null;
            }, i * 20L, TimeUnit.MILLISECONDS));
        }
        for (Future<?> each : all) {
            each.get();
        }
        hands.shutdown();
        long[] sorted = times.stream().mapToLong(Long::longValue).sorted().toArray();
        System.out.printf("%s: a kit of %d products held, 50 a second: p50 %.1f ms, p95 %.1f ms, p99 %.1f ms, most %.1f ms%n", name, kit.size(), millis(sorted, 0.5), millis(sorted, 0.95),
                millis(sorted, 0.99), Arrays.stream(sorted).max().orElse(0) / 1e6);
    }

    private static double millis(long[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] / 1e6;
    }
}
