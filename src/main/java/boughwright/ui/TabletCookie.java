package boughwright.ui;

import boughwright.people.Tablets;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinResponse;
import jakarta.servlet.http.Cookie;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;

/**
 * The cookie by which an enrolled tablet is known. Scripts do not see it, other sites do not send it, and over https it goes nowhere else:
 * its name then begins with {@code __Host-}, with which browsers refuse it from any other host, path or an open line.
 */
final class TabletCookie {

    private static final String SECURE = "__Host-";
    /** Browsers keep no cookie longer. */
    private static final Duration KEPT = Duration.ofDays(400);

    private TabletCookie() {
    }

    private static String name(VaadinRequest request) {
        return (request.isSecure() ? SECURE : "") + Tablets.COOKIE;
    }

    /** The mark that the browser shows. */
    static Optional<String> of(VaadinRequest request) {
        String name = name(request);
        Cookie[] cookies = request.getCookies();
        return cookies == null ? Optional.empty() : Arrays.stream(cookies).filter(c -> c.getName().equals(name)).map(Cookie::getValue).findFirst();
    }

    static void give(VaadinRequest request, VaadinResponse response, String mark) {
        response.addCookie(cookie(request, mark, (int) KEPT.toSeconds()));
    }

    static void takeAway(VaadinRequest request, VaadinResponse response) {
        response.addCookie(cookie(request, "", 0));
    }

    private static Cookie cookie(VaadinRequest request, String value, int seconds) {
        Cookie cookie = new Cookie(name(request), value);
        cookie.setHttpOnly(true);
        cookie.setSecure(request.isSecure());
        cookie.setPath("/");
        cookie.setMaxAge(seconds);
        cookie.setAttribute("SameSite", "Strict");
        return cookie;
    }
}
