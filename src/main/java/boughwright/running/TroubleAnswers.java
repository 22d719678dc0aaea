package boughwright.running;

import boughwright.storage.Trouble;
import boughwright.text.Text;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.dao.DataAccessException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.transaction.TransactionException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;

/** What other programs are told while nothing can be read or kept: a problem detail (RFC 9457) with 503 and when to try again. */
@RestControllerAdvice
@Order(Ordered.HIGHEST_PRECEDENCE)
class TroubleAnswers {

    private static final Logger LOG = LoggerFactory.getLogger(TroubleAnswers.class);
    private static final String SECONDS = "5";

    @ExceptionHandler({DataAccessException.class, TransactionException.class})
    ResponseEntity<ProblemDetail> told(RuntimeException failure) {
        Trouble trouble = Trouble.of(failure);
        if (trouble == Trouble.NONE) {
            throw failure;
        }
        LOG.warn("The database cannot be used: {}", failure.toString());
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatus.SERVICE_UNAVAILABLE,
                Text.of(trouble == Trouble.FULL ? "running.full" : "running.away"));
        problem.setTitle(Text.of("running.title"));
        return ResponseEntity.status(HttpStatus.SERVICE_UNAVAILABLE).header(HttpHeaders.RETRY_AFTER, SECONDS).body(problem);
    }
}
