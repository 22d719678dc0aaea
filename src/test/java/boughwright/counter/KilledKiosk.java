package boughwright.counter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Customers and associates at a kiosk whose process is killed with SIGKILL in the middle of their work and started again, over and over. What
 * was acknowledged must be there afterwards; what was not may be there or not, once and whole.
 */
final class KilledKiosk {

    private static final int CLIENTS = 4;

    private final Path data;
    private final SplittableRandom random;
    private final HttpClient http = HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(2)).build();
    /** By code: the last answer that was acknowledged, and the last that was sent. */
    private final Map<String, long[]> answers = new ConcurrentHashMap<>();
    /** By key of the wish: what became of it. */
    private final Map<String, Wish> wishes = new ConcurrentHashMap<>();
    private final AtomicLong acknowledged = new AtomicLong();
    private long longestStart;

    /** @param looked whether it was found after a start; nobody touches it any more */
    private record Wish(String code, int packs, Optional<String> number, boolean looked) {
    }

    /** What was seen. */
    record Seen(int kills, long acknowledged, int consultations, int holds, Duration longestStart) {
    }

    KilledKiosk(Path data, long seed) {
        this.data = data;
        this.random = new SplittableRandom(seed);
    }

    private final class Running {

        final Process process;
        final String address;

        Running() throws IOException {
            long begun = System.nanoTime();
            process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx200m",
                    "-cp", System.getProperty("java.class.path"), LeanKiosk.class.getName(), data.toString()).redirectErrorStream(true).start();
            BufferedReader words = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
            List<String> said = new ArrayList<>();
            String line = words.readLine();
            while (line != null && !line.startsWith("ready ")) {
                said.add(line);
                line = words.readLine();
            }
            assertThat(line).as(String.join("\n", said)).isNotNull();
            address = "http://127.0.0.1:" + line.substring("ready ".length());
            longestStart = Math.max(longestStart, System.nanoTime() - begun);
            Thread drain = new Thread(() -> words.lines().forEach(l -> { }));
            drain.setDaemon(true);
            drain.start();
        }

        String ask(String path) throws IOException, InterruptedException {
            HttpResponse<String> answer = http.send(HttpRequest.newBuilder(URI.create(address + path)).timeout(Duration.ofSeconds(20)).build(),
                    HttpResponse.BodyHandlers.ofString());
            if (answer.statusCode() != 200) {
                throw new IllegalStateException(path + " → " + answer.statusCode() + " " + answer.body());
            }
            return answer.body();
        }

        void kill() throws InterruptedException {
            process.destroyForcibly().waitFor();
        }
    }

    /** Kills the process so many times, looking after each start whether everything is there. */
    Seen run(int kills) throws IOException, InterruptedException {
        Running kiosk = new Running();
        for (int i = 0; i < kills; i++) {
            work(kiosk, 200 + random.nextInt(400), i);
            kiosk = new Running();
            look(kiosk);
        }
        int holds = (int) wishes.values().stream().filter(w -> w.number().isPresent()).count();
        kiosk.kill();
        return new Seen(kills, acknowledged.get(), answers.size(), holds, Duration.ofNanos(longestStart));
    }

    private void work(Running kiosk, long millis, int round) throws InterruptedException {
        AtomicBoolean killed = new AtomicBoolean();
        List<Throwable> broken = java.util.Collections.synchronizedList(new ArrayList<>());
        List<Thread> clients = new ArrayList<>();
        for (int i = 0; i < CLIENTS; i++) {
            SplittableRandom mine = random.split();
            String name = round + "-" + i;
            Thread client = new Thread(() -> {
                try {
                    serve(kiosk, mine, name);
                } catch (IOException cable) {
                    // The process is gone; whatever was on its way has no answer.
                } catch (InterruptedException | RuntimeException e) {
                    if (!killed.get()) {
                        broken.add(e);
                    }
                }
            });
            clients.add(client);
            client.start();
        }
        Thread.sleep(millis);
        killed.set(true);
        kiosk.kill();
        for (Thread client : clients) {
            client.join();
        }
        assertThat(broken).isEmpty();
    }

    private void serve(Running kiosk, SplittableRandom mine, String name) throws IOException, InterruptedException {
        for (int turn = 0; ; turn++) {
            String code = kiosk.ask("/begin");
            acknowledged.incrementAndGet();
            long[] known = answers.computeIfAbsent(code, c -> new long[2]);
            for (int n = 1; n <= 6; n++) {
                known[1] = n;
                kiosk.ask("/keep?code=" + code + "&n=" + n);
                known[0] = n;
                acknowledged.incrementAndGet();
                if (mine.nextInt(3) == 0) {
                    String key = name + "-" + turn + "-" + n;
                    int packs = 1 + mine.nextInt(5);
                    wishes.put(key, new Wish(code, packs, Optional.empty(), false));
                    // A double tap: the same wish twice.
                    String number = kiosk.ask("/hold?code=" + code + "&packs=" + packs + "&key=" + key);
                    wishes.put(key, new Wish(code, packs, Optional.of(number), false));
                    acknowledged.incrementAndGet();
                    assertThat(kiosk.ask("/hold?code=" + code + "&packs=" + packs + "&key=" + key)).isEqualTo(number);
                }
            }
        }
    }

    private void look(Running kiosk) throws IOException, InterruptedException {
        // Only those of the last rounds are asked for one by one: what survived one start is touched by nobody any more.
        for (Map.Entry<String, long[]> known : answers.entrySet()) {
            long[] bounds = known.getValue();
            if (bounds.length == 2) {
                String[] kept = kiosk.ask("/state?code=" + known.getKey()).split(" ", 2);
                assertThat(kept[0]).as("the consultation " + known.getKey()).isNotEqualTo("gone");
                assertThat(Long.parseLong(kept[0])).as("the last answer of " + known.getKey()).isBetween(bounds[0], bounds[1]);
                assertThat(kept[1]).isEqualTo("{\"n\": " + kept[0] + "}");
                known.setValue(new long[3]);
            }
        }
        long open = 0;
        for (Map.Entry<String, Wish> known : new ArrayList<>(wishes.entrySet())) {
            Wish wish = known.getValue();
            if (wish.looked()) {
                continue;
            }
            // The same wish again, as somebody does whose screen has not answered: done now, or done before, never twice.
            String number = kiosk.ask("/hold?code=" + wish.code() + "&packs=" + wish.packs() + "&key=" + known.getKey());
            wish.number().ifPresent(n -> assertThat(number).as("the hold of " + wish.code()).isEqualTo(n));
            wishes.put(known.getKey(), new Wish(wish.code(), wish.packs(), Optional.of(number), true));
        }
        Map<String, Integer> newest = new java.util.HashMap<>();
        for (Wish wish : wishes.values()) {
            newest.merge(wish.code(), Integer.parseInt(wish.number().orElseThrow()), Math::max);
        }
        for (Wish wish : wishes.values()) {
            if (newest.get(wish.code()) == Integer.parseInt(wish.number().orElseThrow())) {
                open += wish.packs();
            }
        }
        assertThat(kiosk.ask("/sums")).as("on hand, held, promised, in open holds").isEqualTo(LeanKiosk.STOCK + " " + open + " " + open + " " + open);
    }
}
