package boughwright.guard;

import boughwright.people.Place;
import boughwright.people.Tablets;
import boughwright.people.Throttle;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.LongSupplier;
import org.springframework.dao.DataAccessException;
import org.springframework.http.HttpStatus;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * How often one address may ask. What takes work (proposals, changes, colours of a photo) and what is only read have a bucket each, kept in
 * this kiosk's memory. Whoever asks for codes that do not exist is put off by the {@link Throttle}, which all kiosks share.
 *
 * <p>The address is the one that the server reports: that of a proxy, unless {@code server.forward-headers-strategy} says to believe what
 * the proxy tells.
 */
final class RateLimits extends OncePerRequestFilter {

    /** Addresses that are remembered; one that has not asked for a minute is forgotten when there are more. */
    private static final int MOST = 10_000;

    private enum Kind { WORK, PAGES }

    private final Map<Kind, Integer> perMinute;
    private final Throttle throttle;
    private final Tablets tablets;
    private final LongSupplier nanos;
    private final Map<String, Bucket> buckets = new ConcurrentHashMap<>();

    /**
     * @param work requests that make something, in a minute; 0 for no limit
     * @param pages requests that read something, in a minute; 0 for no limit
     */
    RateLimits(int work, int pages, Throttle throttle, Tablets tablets, LongSupplier nanos) {
        this.perMinute = Map.of(Kind.WORK, work, Kind.PAGES, pages);
        this.throttle = throttle;
        this.tablets = tablets;
        this.nanos = nanos;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain) throws ServletException, IOException {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        Optional<Kind> kind = kind(request.getMethod(), path);
        if (kind.isEmpty()) {
            chain.doFilter(request, response);
            return;
        }
        String address = Place.network(request.getRemoteAddr());
        Optional<Duration> pause = take(kind.get(), address);
        boolean coded = path.startsWith("/api/proposals/") || path.startsWith("/at-home/") && !path.equals("/at-home/worker.js");
        if (pause.isEmpty() && coded) {
            pause = guessing(address, request);
        }
        if (pause.isPresent()) {
            Problems.tooMany(response, pause.get());
            return;
        }
        chain.doFilter(request, response);
        if (coded && response.getStatus() == HttpStatus.NOT_FOUND.value()) {
            guessed(address);
        }
    }

    /** While the database is away there is nothing to guess, and what was asked for says so better. */
    private Optional<Duration> guessing(String address, HttpServletRequest request) {
        try {
            return throttle.pause(Throttle.Kind.LINK, address).filter(p -> !enrolled(request));
        } catch (DataAccessException away) {
            return Optional.empty();
        }
    }

    private void guessed(String address) {
        try {
            throttle.begin(Throttle.Kind.LINK, address);
        } catch (DataAccessException away) {
            // It could not even be looked up.
        }
    }

    /** The shop's own tablets go on, although somebody else behind the same address is guessing. */
    private boolean enrolled(HttpServletRequest request) {
        Cookie[] cookies = request.getCookies();
        return cookies != null && Arrays.stream(cookies).filter(c -> c.getName().endsWith(Tablets.COOKIE)).anyMatch(c -> tablets.of(c.getValue()).isPresent());
    }

    private static Optional<Kind> kind(String method, String path) {
        if (method.equals("POST") && path.startsWith("/api/")) {
            return Optional.of(Kind.WORK);
        }
        return path.startsWith("/api/") || path.startsWith("/at-home/") ? Optional.of(Kind.PAGES) : Optional.empty();
    }

    private Optional<Duration> take(Kind kind, String address) {
        int limit = perMinute.get(kind);
        if (limit == 0) {
            return Optional.empty();
        }
        long now = nanos.getAsLong();
        if (buckets.size() > MOST) {
            buckets.values().removeIf(bucket -> bucket.full(now));
        }
        return buckets.computeIfAbsent(kind + " " + address, key -> new Bucket(limit, now)).take(now);
    }
}
