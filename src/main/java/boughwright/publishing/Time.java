package boughwright.publishing;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The time of day where the kiosk stands, for what is kept and for what begins on a day; no proposal depends on it. */
@Configuration(proxyBeanMethods = false)
class Time {

    @Bean
    Clock clock() {
        return Clock.systemDefaultZone();
    }
}
