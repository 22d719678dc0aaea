package boughwright.guard;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.security.SecureRandom;
import java.util.Base64;
import org.springframework.web.filter.OncePerRequestFilter;

/** Tells browsers with each answer what to refuse. What Spring Security says by itself is left to it. */
final class BrowserRules extends OncePerRequestFilter {

    /** Nothing of the device is asked for but the whole screen, and that it stays bright. */
    private static final String FEATURES = "accelerometer=(), autoplay=(), bluetooth=(), camera=(), display-capture=(), encrypted-media=(), fullscreen=(self), geolocation=(), "
            + "gyroscope=(), hid=(), magnetometer=(), microphone=(), midi=(), payment=(), publickey-credentials-get=(), screen-wake-lock=(self), serial=(), usb=(), "
            + "xr-spatial-tracking=()";

    private final SecureRandom random = new SecureRandom();

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain) throws ServletException, IOException {
        byte[] bytes = new byte[16];
        random.nextBytes(bytes);
        String nonce = Base64.getEncoder().encodeToString(bytes);
        request.setAttribute(PageNonce.ATTRIBUTE, nonce);
        response.setHeader("Content-Security-Policy", ContentPolicy.of(request.getRequestURI().substring(request.getContextPath().length()), nonce));
        response.setHeader("Permissions-Policy", FEATURES);
        response.setHeader("Cross-Origin-Embedder-Policy", "require-corp");
        response.setHeader("X-Permitted-Cross-Domain-Policies", "none");
        chain.doFilter(request, response);
    }
}
