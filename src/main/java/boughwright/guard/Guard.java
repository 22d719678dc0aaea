package boughwright.guard;

import boughwright.people.Role;
import jakarta.servlet.DispatcherType;
import java.util.EnumSet;
import java.util.Set;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpMethod;
import org.springframework.security.config.Customizer;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.session.NullAuthenticatedSessionStrategy;

/**
 * The chain of filters before everything.
 *
 * <p>Screens are permitted here as a whole: a view's address answers with the same empty page to everybody, and what is then shown is up to
 * the view's door. A screen's calls bear Vaadin's own token against forged requests, which it compares for each open page; so Spring
 * Security's is left out for them. The rest is {@link Endpoints}.
 */
@Configuration(proxyBeanMethods = false)
class Guard {

    @Bean
    SecurityFilterChain everything(HttpSecurity http) throws Exception {
        http.securityContext(context -> context.securityContextRepository(new SessionSignIn()))
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.NEVER)
                        // The door gives the session another id itself.
                        .sessionAuthenticationStrategy(new NullAuthenticatedSessionStrategy()))
                .csrf(AbstractHttpConfigurer::disable)
                .formLogin(AbstractHttpConfigurer::disable).httpBasic(AbstractHttpConfigurer::disable).logout(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable).anonymous(Customizer.withDefaults())
                .authorizeHttpRequests(requests -> {
                    requests.dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.FORWARD, DispatcherType.ASYNC).permitAll();
                    for (Endpoints.Endpoint endpoint : Endpoints.ALL) {
                        for (HttpMethod method : endpoint.method() == HttpMethod.GET ? Set.of(HttpMethod.GET, HttpMethod.HEAD) : Set.of(endpoint.method())) {
                            if (endpoint.roles().isEmpty()) {
                                requests.requestMatchers(method, endpoint.pattern()).permitAll();
                            } else {
                                Set<Role> roles = EnumSet.copyOf(endpoint.roles());
                                roles.add(Role.MANAGER);
                                requests.requestMatchers(method, endpoint.pattern()).hasAnyRole(roles.stream().map(Role::name).toArray(String[]::new));
                            }
                        }
                    }
                    requests.requestMatchers(Endpoints.PREFIXES.toArray(String[]::new)).denyAll();
                    requests.anyRequest().permitAll();
                });
        return http.build();
    }
}
