package boughwright.guard;

import boughwright.text.Text;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;

/** Answers with problem details (RFC 9457) before anything else has been asked. */
final class Problems {

    private static final ObjectMapper JSON = new ObjectMapper();

    private Problems() {
    }

    static void answer(HttpServletResponse response, HttpStatus status, String title, String detail) throws IOException {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(status, detail);
        problem.setTitle(title);
        answer(response, problem);
    }

    static void answer(HttpServletResponse response, ProblemDetail problem) throws IOException {
        var body = JSON.createObjectNode().put("type", problem.getType() == null ? "about:blank" : problem.getType().toString()).put("title", problem.getTitle())
                .put("status", problem.getStatus()).put("detail", problem.getDetail());
        if (problem.getProperties() != null) {
            problem.getProperties().forEach((name, value) -> body.put(name, String.valueOf(value)));
        }
        response.setStatus(problem.getStatus());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.getOutputStream().write(JSON.writeValueAsString(body).getBytes(StandardCharsets.UTF_8));
    }

    /** Whoever asks is to wait. */
    static void tooMany(HttpServletResponse response, Duration pause) throws IOException {
        long seconds = Math.max(1, pause.plusMillis(999).toSeconds());
        response.setHeader(HttpHeaders.RETRY_AFTER, String.valueOf(seconds));
        answer(response, HttpStatus.TOO_MANY_REQUESTS, Text.of("guard.too-many.title"), Text.of("guard.too-many", seconds));
    }
}
