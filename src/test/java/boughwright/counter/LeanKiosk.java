package boughwright.counter;

import boughwright.catalogue.CatalogueFixture;
import boughwright.consultation.Interviews;
import boughwright.measure.Units;
import boughwright.shelf.Shelf;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.autoconfigure.flyway.FlywayAutoConfiguration;
import org.springframework.boot.autoconfigure.jdbc.DataSourceAutoConfiguration;
import org.springframework.boot.autoconfigure.jdbc.DataSourceTransactionManagerAutoConfiguration;
import org.springframework.boot.autoconfigure.jdbc.JdbcClientAutoConfiguration;
import org.springframework.boot.autoconfigure.jdbc.JdbcTemplateAutoConfiguration;
import org.springframework.boot.autoconfigure.transaction.TransactionAutoConfiguration;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * A process of its own with what the kiosk keeps and nothing else: the same file database, migrations, interviews, shelf and holds, behind a
 * plain HTTP server on the loopback address. No rulebook and no screens, so it starts in a second or two, and can be killed often.
 */
public final class LeanKiosk {

    static final String SKU = "BL-1";
    static final int STOCK = 1_000_000;

    private final ConfigurableApplicationContext context;

    private LeanKiosk(ConfigurableApplicationContext context) {
        this.context = context;
    }

    /** No configuration by name, or every kiosk of the tests would find it. */
    @ComponentScan({"boughwright.storage", "boughwright.shelf"})
    @Import({Interviews.class, Holds.class, Deeds.class, Blocked.class})
    @ImportAutoConfiguration({DataSourceAutoConfiguration.class, DataSourceTransactionManagerAutoConfiguration.class, TransactionAutoConfiguration.class,
            JdbcTemplateAutoConfiguration.class, JdbcClientAutoConfiguration.class, FlywayAutoConfiguration.class})
    static class Stores {

        @Bean
        Clock clock() {
            return Clock.systemUTC();
        }
    }

    /** Prints its port when it is ready. @param args the folder of the data */
    public static void main(String[] args) throws IOException {
        ConfigurableApplicationContext context = new SpringApplicationBuilder(Stores.class).web(WebApplicationType.NONE).logStartupInfo(false)
                .run("--boughwright.data=" + args[0], "--logging.level.root=WARN");
        context.getBean(Shelf.class).open(() -> CatalogueFixture.LOOKS, CatalogueFixture.USD,
                CatalogueFixture.file(CatalogueFixture.ball("stock", String.valueOf(STOCK))));
        LeanKiosk kiosk = new LeanKiosk(context);
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.setExecutor(Executors.newFixedThreadPool(8));
        server.createContext("/begin", e -> answer(e, kiosk::begin));
        server.createContext("/keep", e -> answer(e, kiosk::keep));
        server.createContext("/hold", e -> answer(e, kiosk::hold));
        server.createContext("/state", e -> answer(e, kiosk::state));
        server.createContext("/holds", e -> answer(e, kiosk::holds));
        server.createContext("/sums", e -> answer(e, kiosk::sums));
        server.start();
        System.out.println("ready " + server.getAddress().getPort());
    }

    private static void answer(HttpExchange exchange, Function<Map<String, String>, String> work) throws IOException {
        byte[] words;
        int status = 200;
        try {
            String query = exchange.getRequestURI().getQuery();
            words = work.apply(query == null ? Map.of() : Arrays.stream(query.split("&")).map(p -> p.split("=", 2)).collect(Collectors.toMap(p -> p[0], p -> p[1])))
                    .getBytes(StandardCharsets.UTF_8);
        } catch (RuntimeException broken) {
            status = 500;
            words = broken.toString().getBytes(StandardCharsets.UTF_8);
        }
        exchange.sendResponseHeaders(status, words.length == 0 ? -1 : words.length);
        exchange.getResponseBody().write(words);
        exchange.close();
    }

    private String begin(Map<String, String> asked) {
        return context.getBean(Interviews.class).begin(state("0")).code();
    }

    private String keep(Map<String, String> asked) {
        context.getBean(Interviews.class).keep(asked.get("code"), state(asked.get("n")));
        return "kept";
    }

    private static Interviews.State state(String n) {
        return new Interviews.State("q" + n, "{\"n\": " + n + "}", Units.FEET, "en");
    }

    private String hold(Map<String, String> asked) {
        Holding holding = context.getBean(Holds.class).hold(asked.get("code"), List.of(new Pack(SKU, "Balls", "A1", Integer.parseInt(asked.get("packs")))),
                Duration.ofHours(2), "Ada", asked.get("key"));
        return holding instanceof Holding.Held held ? String.valueOf(held.hold().number()) : holding.getClass().getSimpleName();
    }

    private String state(Map<String, String> asked) {
        return context.getBean(Interviews.class).open(asked.get("code")).map(c -> c.question().substring(1) + " " + c.answers()).orElse("gone");
    }

    private JdbcClient database() {
        return context.getBean(JdbcClient.class);
    }

    /** Each hold of a consultation: its number, its packs and whether it is open. */
    private String holds(Map<String, String> asked) {
        return database().sql("""
                        select h.number || ':' || l.packs || ':' || h.state from hold h join hold_line l on l.code = h.code and l.number = h.number
                        where h.code = :code order by h.number""")
                .param("code", asked.get("code")).query(String.class).list().stream().collect(Collectors.joining(" "));
    }

    /** On hand, held, promised by codes, and in open holds. */
    private String sums(Map<String, String> asked) {
        return sum("select on_hand from stock where sku = '" + SKU + "'") + " " + sum("select held from stock where sku = '" + SKU + "'") + " "
                + sum("select coalesce(sum(packs), 0) from reserved") + " "
                + sum("select coalesce(sum(l.packs), 0) from hold h join hold_line l on l.code = h.code and l.number = h.number where h.state in ('HELD', 'READY', 'PARTLY')");
    }

    private long sum(String query) {
        return database().sql(query).query(Long.class).single();
    }
}
