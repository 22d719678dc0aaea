package boughwright.running;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A busy Saturday: so many tablets at one kiosk in a process of its own, each answering every three seconds until it has its tree, and then
 * again from the beginning. Prints how long steps and proposals took and what a session keeps in memory. On demand, never part of a build.
 */
public final class LoadMeasurements {

    private static final int TABLETS = Integer.getInteger("tablets", 200);
    private static final int SECONDS = Integer.getInteger("seconds", 120);
    private static final long EVERY = 3_000;
    /** About as long as one takes to the tree: customers do not all come at once, so each begins at some moment of it. */
    private static final long RAMP = 57_000;
    /** A kiosk has been at work for a while before the shop is full; in its first minutes it compiles itself. */
    private static final long WARM = 120_000;

    private final List<Long> steps = Collections.synchronizedList(new ArrayList<>());
    private final List<Long> proposals = Collections.synchronizedList(new ArrayList<>());
    private final List<String> errors = Collections.synchronizedList(new ArrayList<>());
    private final AtomicInteger late = new AtomicInteger();

    private LoadMeasurements() {
    }

    /** A tablet with its place in the interview. */
    private static final class Guest {

        private Tablet tablet;
        private boolean answered;
        private final SplittableRandom random;

        Guest(SplittableRandom random) {
            this.random = random;
        }
    }

    private static int free() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    public static void main(String[] args) throws Exception {
        new LoadMeasurements().run();
    }

    private void run() throws Exception {
        Path data = Files.createTempDirectory("load");
        int port = free();
        int watched = free();
        Process kiosk = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx1536m", "-cp", System.getProperty("java.class.path"),
                "boughwright.Boughwright", "--server.port=" + port, "--management.server.port=" + watched, "--spring.profiles.active=watched", "--boughwright.data=" + data,
                "--logging.level.root=WARN").redirectErrorStream(true).redirectOutput(data.resolve("log").toFile()).start();
        String address = "http://127.0.0.1:" + port;
        try {
            await(address + "/readyz");
            measure(address, "http://127.0.0.1:" + watched, kiosk.pid());
            System.out.println("the kiosk’s log: " + Files.readString(data.resolve("log")).lines().filter(l -> l.contains("ERROR") || l.contains("WARN")).limit(8).toList());
        } finally {
            kiosk.destroyForcibly().waitFor();
        }
    }

    private void measure(String address, String watched, long pid) throws Exception {
        SplittableRandom random = new SplittableRandom(26);
        List<Guest> guests = new ArrayList<>();
        // One that wakes everything up.
        Guest first = new Guest(random.split());
        for (int i = 0; i < 40; i++) {
            step(first, address);
        }
        steps.clear();
        proposals.clear();
        long before = heap(watched, pid);
        for (int i = 0; i < TABLETS; i++) {
            Guest guest = new Guest(random.split());
            guest.tablet = new Tablet(address);
            guest.tablet.open("");
            guests.add(guest);
        }
        long inviting = heap(watched, pid);
        // In sessions of their own, beside those that show the inviting page.
        for (Guest guest : guests) {
            begin(guest, address);
            step(guest, address);
        }
        long asking = heap(watched, pid);
        System.out.printf("heap: %d MB without guests; a session that shows the inviting page keeps %d kB, one in the interview %d kB%n", before >> 20,
                (inviting - before) / TABLETS >> 10, (asking - inviting) / TABLETS >> 10);
        steps.clear();

        ScheduledExecutorService clock = Executors.newScheduledThreadPool(Math.min(TABLETS, 64));
        for (int i = 0; i < guests.size(); i++) {
            Guest guest = guests.get(i);
            clock.scheduleAtFixedRate(() -> {
                long begun = System.nanoTime();
                step(guest, address);
                if (System.nanoTime() - begun > EVERY * 1_000_000) {
                    late.incrementAndGet();
                }
            }, random.nextLong(RAMP), EVERY, TimeUnit.MILLISECONDS);
        }
        Thread.sleep(RAMP + WARM);
        steps.clear();
        proposals.clear();
        errors.clear();
        late.set(0);
        long most = 0;
        for (int i = 0; i < SECONDS / 10; i++) {
            Thread.sleep(10_000);
            most = Math.max(most, used(watched));
        }
        clock.shutdown();
        clock.awaitTermination(60, TimeUnit.SECONDS);
        System.out.println(TABLETS + " tablets for " + SECONDS + " s, each every 3 s");
        System.out.println("interview steps: " + told(steps));
        System.out.println("proposals: " + told(proposals));
        System.out.println("errors: " + errors.size() + " " + errors.stream().distinct().limit(3).toList() + ", steps longer than 3 s: " + late);
        System.out.println("heap: at most " + (most >> 20) + " MB in use while they worked, " + (heap(watched, pid) >> 20) + " MB after a collection with all sessions open");
    }

    private void begin(Guest guest, String address) throws IOException, InterruptedException {
        guest.tablet = new Tablet(address);
        guest.tablet.open("");
        guest.tablet.press(t -> t.startsWith("Begin") || t.startsWith("Start"));
        guest.answered = false;
    }

    /** One thing that a customer does: begins, answers, goes on, or asks for the tree. */
    private void step(Guest guest, String address) {
        long begun = System.nanoTime();
        try {
            if (guest.tablet == null) {
                begin(guest, address);
                steps.add(System.nanoTime() - begun);
                return;
            }
            Tablet tablet = guest.tablet;
            List<Integer> buttons = tablet.buttons();
            List<Integer> cards = buttons.stream().filter(b -> tablet.is(b, "card")).toList();
            if (!guest.answered && !cards.isEmpty()) {
                tablet.press(cards.get(guest.random.nextInt(Math.min(4, cards.size()))));
                guest.answered = true;
                steps.add(System.nanoTime() - begun);
                return;
            }
            guest.answered = false;
            boolean last = buttons.stream().anyMatch(b -> tablet.text(b).equals("Show my tree"));
            tablet.press(t -> t.startsWith("Next") || t.equals("Show my tree"));
            if (!last) {
                steps.add(System.nanoTime() - begun);
                return;
            }
            for (int i = 0; i < 120 && !made(tablet); i++) {
                Thread.sleep(100);
                tablet.poll();
            }
            if (!made(tablet)) {
                throw new IllegalStateException("no proposal");
            }
            proposals.add(System.nanoTime() - begun);
            // The next customer.
            tablet.wipe();
            guest.tablet = null;
        } catch (IOException | InterruptedException | RuntimeException e) {
            errors.add(e.toString());
            guest.tablet = null;
        }
    }

    /** Whether the tree that was asked for or the ways out of a conflict are there. */
    private static boolean made(Tablet tablet) {
        return tablet.shows("way") || tablet.shows("conflict-page");
    }

    private static String told(List<Long> nanos) {
        List<Long> sorted = new ArrayList<>(nanos);
        Collections.sort(sorted);
        return sorted.isEmpty() ? "none" : sorted.size() + ", p50 " + millis(sorted, 0.5) + ", p95 " + millis(sorted, 0.95) + ", p99 " + millis(sorted, 0.99) + ", most " + millis(sorted, 1);
    }

    private static String millis(List<Long> sorted, double share) {
        return sorted.get(Math.min(sorted.size() - 1, (int) (share * sorted.size()))) / 1_000_000 + " ms";
    }

    private static long heap(String watched, long pid) throws Exception {
        for (int i = 0; i < 3; i++) {
            new ProcessBuilder("jcmd", String.valueOf(pid), "GC.run").redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
        }
        return used(watched);
    }

    private static long used(String watched) throws Exception {
        return (long) get(watched + "/actuator/prometheus").lines().filter(l -> l.startsWith("jvm_memory_used_bytes{area=\"heap\"")).mapToDouble(
                l -> Double.parseDouble(l.substring(l.lastIndexOf(' ') + 1))).sum();
    }

    private static String get(String address) throws Exception {
        return HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString()).body();
    }

    private static void await(String address) throws Exception {
        for (int i = 0; i < 600; i++) {
            try {
                if (HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.discarding()).statusCode() == 200) {
                    return;
                }
            } catch (IOException notYet) {
                // It is still starting.
            }
            Thread.sleep(200);
        }
        throw new IllegalStateException("the kiosk did not get ready");
    }
}
