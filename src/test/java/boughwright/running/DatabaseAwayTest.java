package boughwright.running;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.Boughwright;
import boughwright.publishing.ShopDoor;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;

/** The PostgreSQL server of a running kiosk is stopped and started again. */
class DatabaseAwayTest {

    @TempDir
    private Path folder;

    private final HttpClient http = HttpClient.newHttpClient();
    private int kiosk;

    private EmbeddedPostgres server(int port) throws IOException {
        return EmbeddedPostgres.builder().setPort(port).setDataDirectory(folder.resolve("pg")).setCleanDataDirectory(false).start();
    }

    private HttpResponse<String> ask(String path) throws Exception {
        return http.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + kiosk + path)).timeout(Duration.ofSeconds(60)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> propose() throws Exception {
        return http.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + kiosk + "/api/proposals")).header("Content-Type", "application/json")
                .timeout(Duration.ofSeconds(60)).POST(HttpRequest.BodyPublishers.ofString("{\"tree\": {\"height\": \"7 ft\"}}")).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static int card(Tablet tablet) {
        return tablet.buttons().stream().filter(b -> tablet.is(b, "card")).findFirst().orElseThrow();
    }

    @Test
    void while_it_is_away_the_kiosk_says_so_and_when_it_is_back_everything_goes_on() throws Exception {
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        EmbeddedPostgres server = server(port);
        try (ConfigurableApplicationContext context = SpringApplication.run(Boughwright.class, "--server.port=0", "--spring.profiles.active=postgresql",
                "--spring.datasource.url=jdbc:postgresql://localhost:" + port + "/postgres", "--spring.datasource.username=postgres", "--logging.level.root=ERROR")) {
            context.getBean(ShopDoor.class).designer();
            kiosk = context.getEnvironment().getRequiredProperty("local.server.port", Integer.class);
            HttpResponse<String> made = propose();
            assertThat(made.statusCode()).isEqualTo(201);
            String code = made.headers().firstValue("Location").orElseThrow();

            Tablet tablet = new Tablet("http://127.0.0.1:" + kiosk);
            tablet.open("");
            tablet.press(t -> t.equals("Begin"));
            tablet.press(card(tablet));
            tablet.press(t -> t.startsWith("Next"));

            server.close();
            tablet.press(card(tablet));
            assertThat(tablet.words()).as("the screen that is open").contains("cannot be reached at the moment").contains("Where will it be seen from?");
            tablet.open("interview");
            assertThat(tablet.words()).as("a screen that is opened").contains("cannot be reached at the moment").contains("Try again");
            long begun = System.nanoTime();
            HttpResponse<String> refused = propose();
            assertThat(Duration.ofNanos(System.nanoTime() - begun)).as("told soon").isLessThan(Duration.ofSeconds(20));
            assertThat(refused.statusCode()).isEqualTo(503);
            assertThat(refused.headers().firstValue("Content-Type")).hasValueSatisfying(t -> assertThat(t).startsWith("application/problem+json"));
            assertThat(refused.headers().firstValue("Retry-After")).isPresent();
            assertThat(refused.body()).contains("cannot be reached at the moment").doesNotContain("SQL", "hikari", "Exception", "jdbc");
            assertThat(ask(code).statusCode()).isEqualTo(503);
            assertThat(ask("/actuator/health/readiness").statusCode()).isEqualTo(503);
            assertThat(ask("/actuator/health/liveness").statusCode()).as("a restart would not help").isEqualTo(200);

            server = server(port);
            begun = System.nanoTime();
            while (propose().statusCode() != 201 && System.nanoTime() - begun < Duration.ofSeconds(30).toNanos()) {
                Thread.sleep(200);
            }
            assertThat(propose().statusCode()).isEqualTo(201);
            assertThat(ask(code).body()).as("what was kept before").isEqualTo(made.body());
            assertThat(ask("/actuator/health/readiness").statusCode()).isEqualTo(200);
            tablet.open("interview");
            assertThat(tablet.words()).as("the interview goes on where it was").contains("Where will it be seen from?").doesNotContain("cannot be reached");
            System.out.println("served again " + Duration.ofNanos(System.nanoTime() - begun).toMillis() + " ms after the database was back");
        } finally {
            server.close();
        }
    }
}
