package boughwright.running;

import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.web.SecurityFilterChain;

/**
 * A port of its own for whoever watches the kiosk, when there is one ({@code management.server.port}; the profile {@code watched} opens it to
 * this machine alone). Who reaches that port may read what is exposed there, and on the kiosk's own port nobody can.
 */
@Configuration(proxyBeanMethods = false)
@ConditionalOnProperty("management.server.port")
class WatchedPort {

    @Bean
    @Order(1)
    SecurityFilterChain watching(HttpSecurity http, Environment environment) throws Exception {
        http.securityMatcher(request -> {
            Integer watched = environment.getProperty("local.management.port", Integer.class);
            Integer kiosk = environment.getProperty("local.server.port", Integer.class);
            return watched != null && !watched.equals(kiosk) && request.getLocalPort() == watched;
        }).authorizeHttpRequests(requests -> requests.anyRequest().permitAll())
                .csrf(AbstractHttpConfigurer::disable).requestCache(AbstractHttpConfigurer::disable).formLogin(AbstractHttpConfigurer::disable)
                .httpBasic(AbstractHttpConfigurer::disable).logout(AbstractHttpConfigurer::disable);
        return http.build();
    }
}
