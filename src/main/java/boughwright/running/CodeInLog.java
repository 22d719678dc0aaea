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
        try {
            if (path.matches()) {
                MDC.put(KEY, path.group(1));
            }
            chain.doFilter(request, response);
        } finally {
            // Screens put it in on the way; the thread goes on to serve somebody else.
            MDC.remove(KEY);
        }
    }
}
