package boughwright;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** A running kiosk with the demo shop on a free port, its data in a folder of its own; one for all tests that need it. */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT)
public abstract class KioskServer {

    private static final Path DATA = folder();

    @LocalServerPort
    protected int port;

    private static Path folder() {
        try {
            return Files.createTempDirectory(Path.of("target"), "kiosk");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @DynamicPropertySource
    static void keepDataApart(DynamicPropertyRegistry properties) {
        properties.add("boughwright.data", DATA::toString);
    }

    protected String address(String path) {
        return "http://localhost:" + port + path;
    }
}
