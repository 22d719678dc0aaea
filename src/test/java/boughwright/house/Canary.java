package boughwright.house;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/** What hostile files try to reach: a method, a system property, a folder and a server of this machine. Public, so that an engine could call it. */
public final class Canary implements AutoCloseable {

    static final String PROPERTY = "boughwright.house.canary";
    /** Stands in a file that no import may read. */
    static final String SECRET = "the-key-is-under-the-third-flowerpot";

    private static final AtomicInteger SONGS = new AtomicInteger();

    private final Path folder;
    private final Path secret;
    private final ServerSocket server;
    private final AtomicInteger calls = new AtomicInteger();

    Canary(Path temporary) throws IOException {
        folder = Files.createDirectory(temporary.resolve("nest"));
        secret = Files.writeString(temporary.resolve("secret.txt"), SECRET);
        server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        Thread door = new Thread(this::listen, "canary");
        door.setDaemon(true);
        door.start();
    }

    private void listen() {
        while (!server.isClosed()) {
            try (Socket caller = server.accept()) {
                calls.incrementAndGet();
            } catch (SocketException closed) {
                return;
            } catch (IOException lost) {
                calls.incrementAndGet();
            }
        }
    }

    public static String sing(String words) {
        SONGS.incrementAndGet();
        return words;
    }

    public static String touch(String path) throws IOException {
        return Files.createFile(Path.of(path)).toString();
    }

    public static String ring(String port) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), Integer.parseInt(port))) {
            return String.valueOf(socket.getInputStream().read());
        }
    }

    Path folder() {
        return folder;
    }

    Path secret() {
        return secret;
    }

    int port() {
        return server.getLocalPort();
    }

    /** What has happened since the last reset; empty while all is well. */
    List<String> trips() throws IOException {
        List<String> trips = new ArrayList<>();
        if (SONGS.get() > 0) {
            trips.add("a method was called");
        }
        if (System.getProperty(PROPERTY) != null) {
            trips.add("a property was set");
        }
        try (Stream<Path> files = Files.list(folder)) {
            files.forEach(file -> trips.add("a file was made: " + file.getFileName()));
        }
        if (calls.get() > 0) {
            trips.add("a server was called");
        }
        return trips;
    }

    void reset() throws IOException {
        SONGS.set(0);
        calls.set(0);
        System.clearProperty(PROPERTY);
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
    }

    @Override
    public void close() throws IOException {
        server.close();
    }
}
