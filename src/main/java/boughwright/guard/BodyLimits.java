package boughwright.guard;

import boughwright.text.Text;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * How much a request may bring before anybody has looked at it. Briefs and changes are read whole, so their bytes are counted here first;
 * a picture and what the till says are read by their endpoints, which count for themselves. A screen's calls say how long they are.
 */
final class BodyLimits extends OncePerRequestFilter {

    /** Characters, as the endpoints count them; each has four bytes at most. */
    private static final int LONGEST_TEXT = 100_000;
    private static final int MOST_BYTES = 4 * LONGEST_TEXT;
    /** A screen's call holds a field's text at most; files come another way. */
    private static final int MOST_CALL = 1_000_000;
    private static final Pattern CALL = Pattern.compile("(^|&)v-r=uidl(&|$)");

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain) throws ServletException, IOException {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        if (!request.getMethod().equals("POST")) {
            chain.doFilter(request, response);
        } else if (path.equals("/api/proposals") || path.startsWith("/api/proposals/")) {
            read(request, response, chain, path.equals("/api/proposals") ? "brief" : "changes");
        } else if (request.getQueryString() == null || !CALL.matcher(request.getQueryString()).find()) {
            chain.doFilter(request, response);
        } else if (request.getContentLengthLong() < 0 || request.getContentLengthLong() > MOST_CALL) {
            response.sendError(HttpStatus.PAYLOAD_TOO_LARGE.value());
        } else {
            chain.doFilter(request, response);
        }
    }

    private static void read(HttpServletRequest request, HttpServletResponse response, FilterChain chain, String field) throws ServletException, IOException {
        byte[] body = request.getContentLengthLong() > MOST_BYTES ? null : request.getInputStream().readNBytes(MOST_BYTES + 1);
        if (body == null || body.length > MOST_BYTES) {
            ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.PAYLOAD_TOO_LARGE, Text.of("api.too-long", LONGEST_TEXT));
            problem.setTitle(Text.of("api.bad-" + field + ".title"));
            problem.setProperty("field", field);
            Problems.answer(response, problem);
            return;
        }
        chain.doFilter(new Read(request, body), response);
    }

    /** A request whose body has been read. */
    private static final class Read extends HttpServletRequestWrapper {

        private final byte[] body;

        Read(HttpServletRequest request, byte[] body) {
            super(request);
            this.body = body;
        }

        @Override
        public ServletInputStream getInputStream() {
            ByteArrayInputStream in = new ByteArrayInputStream(body);
            return new ServletInputStream() {
                @Override
                public int read() {
                    return in.read();
                }

                @Override
                public int read(byte[] bytes, int from, int length) {
                    return in.read(bytes, from, length);
                }

                @Override
                public boolean isFinished() {
                    return in.available() == 0;
                }

                @Override
                public boolean isReady() {
                    return true;
                }

                @Override
                public void setReadListener(ReadListener listener) {
                    throw new UnsupportedOperationException("the body is here already");
                }
            };
        }

        @Override
        public BufferedReader getReader() {
            return new BufferedReader(new InputStreamReader(getInputStream(), StandardCharsets.UTF_8));
        }
    }
}
