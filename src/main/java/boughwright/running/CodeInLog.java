package boughwright.running;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slf4j.MDC;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Whatever is written into the log while a consultation is asked for bears its code as {@code consultation}. */
@Component
class CodeInLog extends OncePerRequestFilter {

    static final String KEY = "consultation";

    private static final Pattern PATH = Pattern.compile("/(?:api/proposals|plan|consultation)/([a-z]+-[2-9]-[a-z]+)(?:/.*)?");

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain) throws ServletException, IOException {
        Matcher path = PATH.matcher(request.getRequestURI());
        if (!path.matches()) {
            chain.doFilter(request, response);
            return;
        }
        try (MDC.MDCCloseable code = MDC.putCloseable(KEY, path.group(1))) {
            chain.doFilter(request, response);
        }
    }
}
