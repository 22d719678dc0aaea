package boughwright.running;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.Boughwright;
import boughwright.publishing.ShopDoor;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;

class WatchedKioskTest {

    @TempDir
    private static Path data;

    private static ConfigurableApplicationContext kiosk;
    private final HttpClient http = HttpClient.newHttpClient();

    @BeforeAll
    static void start() {
        kiosk = SpringApplication.run(Boughwright.class, "--server.port=0", "--management.server.port=0", "--spring.profiles.active=watched",
                "--boughwright.data=" + data, "--logging.level.root=WARN");
        kiosk.getBean(ShopDoor.class).designer();
    }

    @AfterAll
    static void stop() {
        kiosk.close();
    }

    private HttpResponse<String> ask(boolean watched, String path) throws Exception {
        return send(HttpRequest.newBuilder(address(watched, path)).build());
    }

    private HttpResponse<String> send(HttpRequest request) throws Exception {
        return http.send(request, HttpResponse.BodyHandlers.ofString());
    }

    private static URI address(boolean watched, String path) {
        return URI.create("http://127.0.0.1:" + kiosk.getEnvironment().getProperty(watched ? "local.management.port" : "local.server.port") + path);
    }

    @Test
    void the_kiosk_s_own_port_says_that_it_is_well_and_nothing_more() throws Exception {
        assertThat(ask(false, "/livez").statusCode()).isEqualTo(200);
        assertThat(ask(false, "/livez").body()).isEqualTo("{\"status\":\"UP\"}");
        for (String path : new String[] {"/actuator/metrics", "/actuator/prometheus", "/actuator/env", "/actuator/sbom", "/actuator/heapdump", "/actuator/shutdown", "/actuator"}) {
            assertThat(ask(false, path).statusCode()).as(path).isIn(401, 403, 404);
        }
    }

    @Test
    void the_kiosk_is_ready_when_rulebook_solver_and_database_are() throws Exception {
        for (int i = 0; i < 100 && ask(false, "/readyz").statusCode() != 200; i++) {
            Thread.sleep(200);
        }
        assertThat(ask(false, "/readyz").statusCode()).isEqualTo(200);
        assertThat(ask(true, "/actuator/health/readiness").body()).contains("\"rulebook\":{\"status\":\"UP\"", "\"solver\":{\"status\":\"UP\"", "\"db\":{\"status\":\"UP\"");
    }

    @Test
    void the_watched_port_tells_how_long_proposals_take_and_how_good_kits_are() throws Exception {
        send(HttpRequest.newBuilder(address(false, "/api/proposals")).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("{\"tree\": {\"height\": \"7 ft\"}}")).build());

        String told = ask(true, "/actuator/prometheus").body();

        assertThat(told).containsPattern("boughwright_proposals_seconds_count\\{outcome=\"kit\"} [1-9]")
                .containsPattern("boughwright_kit_gap_count [1-9]").containsPattern("boughwright_consultations_open [1-9]").contains("boughwright_holds_packs 0.0")
                .contains("tomcat_sessions_active_current_sessions", "jvm_memory_used_bytes", "hikaricp_connections_active");
        assertThat(ask(true, "/actuator/env").statusCode()).as("not exposed").isIn(401, 403, 404);
        assertThat(ask(true, "/api/products").statusCode()).as("the kiosk itself is not at that port").isIn(401, 403, 404);
    }
}
