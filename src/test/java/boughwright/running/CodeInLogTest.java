package boughwright.running;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskServer;
import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.AppenderBase;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.JdbcTemplate;

/** What is logged while a tablet is touched bears the code of its consultation, and of no other. */
class CodeInLogTest extends KioskServer {

    private final Logger statements = (Logger) LoggerFactory.getLogger(JdbcTemplate.class);
    private final List<String> codes = new CopyOnWriteArrayList<>();
    private final AppenderBase<ILoggingEvent> ear = new AppenderBase<>() {
        @Override
        protected void append(ILoggingEvent event) {
            if (event.getThreadName().contains("exec")) {
                codes.add(event.getMDCPropertyMap().getOrDefault("consultation", ""));
            }
        }
    };

    @BeforeEach
    void listen() {
        ear.setContext(statements.getLoggerContext());
        ear.start();
        statements.setLevel(Level.DEBUG);
        statements.addAppender(ear);
    }

    @AfterEach
    void stopListening() {
        statements.detachAppender(ear);
        statements.setLevel(null);
    }

    private static String code(Tablet tablet) {
        Matcher said = Pattern.compile("Consultation ([A-Z]+ [2-9] [A-Z]+)").matcher(tablet.words());
        assertThat(said.find()).isTrue();
        return said.group(1).toLowerCase(java.util.Locale.ROOT).replace(' ', '-');
    }

    @Test
    void statements_of_a_touch_bear_the_code_that_is_open_on_the_tablet_and_leave_none_to_the_next() throws Exception {
        String address = "http://localhost:" + port;
        Tablet one = new Tablet(address);
        one.open("interview");
        one.press(t -> t.startsWith("9 ft"));
        Tablet other = new Tablet(address);
        other.open("interview");
        other.press(t -> t.startsWith("9 ft"));

        codes.clear();
        one.press(t -> t.startsWith("Next"));
        assertThat(codes).isNotEmpty().containsOnly(code(one));
        codes.clear();
        other.press(t -> t.startsWith("Next"));
        assertThat(codes).isNotEmpty().containsOnly(code(other));
        codes.clear();
        // One that nothing is open on yet, served by the same threads.
        new Tablet(address).open("code");
        assertThat(codes).allMatch(String::isEmpty);
    }
}
