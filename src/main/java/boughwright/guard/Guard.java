package boughwright.guard;

import boughwright.people.Role;
import boughwright.people.Tablets;
import boughwright.people.Throttle;
import boughwright.text.Text;
import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.EnumSet;
import java.util.Set;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.security.config.Customizer;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.config.observation.SecurityObservationSettings;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.session.NullAuthenticatedSessionStrategy;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.CrossOriginResourcePolicyHeaderWriter.CrossOriginResourcePolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.util.AntPathMatcher;

/**
 * The chain of filters before everything.
 *
 * <p>Screens are permitted here as a whole: a view's address answers with the same empty page to everybody, and what is then shown is up to
 * the view's door. A screen's calls bear Vaadin's own token against forged requests, which it compares for each open page; so Spring
 * Security's is left out for them. The rest is {@link Endpoints}.
 */
@Configuration(proxyBeanMethods = false)
class Guard {

    private static final AntPathMatcher PATHS = new AntPathMatcher();

    /** Each filter of the chain would be watched by itself; that costs more than the filters do. */
    @Bean
    SecurityObservationSettings unwatched() {
        return SecurityObservationSettings.noObservations();
    }

    @Bean
    SecurityFilterChain everything(HttpSecurity http, Throttle throttle, Tablets tablets, @Value("${boughwright.limit.work}") int work, @Value("${boughwright.limit.pages}") int pages)
            throws Exception {
        http.addFilterBefore(new BrowserRules(), HeaderWriterFilter.class).addFilterAfter(new RateLimits(work, pages, throttle, tablets, System::nanoTime), HeaderWriterFilter.class)
                .addFilterAfter(new BodyLimits(), RateLimits.class)
                .headers(headers -> headers.frameOptions(HeadersConfigurer.FrameOptionsConfig::deny)
                        .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.NO_REFERRER))
                        .crossOriginOpenerPolicy(opener -> opener.policy(CrossOriginOpenerPolicy.SAME_ORIGIN))
                        .crossOriginResourcePolicy(resource -> resource.policy(CrossOriginResourcePolicy.SAME_ORIGIN)))
                .securityContext(context -> context.securityContextRepository(new SessionSignIn()))
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.NEVER)
                        // The door gives the session another id itself.
                        .sessionAuthenticationStrategy(new NullAuthenticatedSessionStrategy()))
                .csrf(AbstractHttpConfigurer::disable)
                .formLogin(AbstractHttpConfigurer::disable).httpBasic(AbstractHttpConfigurer::disable).logout(AbstractHttpConfigurer::disable)
                .exceptionHandling(refused -> refused.authenticationEntryPoint((request, response, why) -> refuse(request, response, HttpStatus.UNAUTHORIZED))
                        .accessDeniedHandler((request, response, why) -> refuse(request, response, HttpStatus.FORBIDDEN)))
                .requestCache(AbstractHttpConfigurer::disable).anonymous(Customizer.withDefaults())
                .authorizeHttpRequests(requests -> {
                    requests.dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.FORWARD, DispatcherType.ASYNC).permitAll();
                    // Nothing is pushed to screens, whatever library would offer it.
                    requests.requestMatchers(Guard::push).denyAll();
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

    /** What nobody may have is not there; what some may have is refused to others. */
    private static void refuse(HttpServletRequest request, HttpServletResponse response, HttpStatus status) throws IOException {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        boolean known = Endpoints.ALL.stream().anyMatch(e -> !e.roles().isEmpty() && e.method().matches(request.getMethod()) && PATHS.match(e.pattern(), path));
        HttpStatus told = known ? status : HttpStatus.NOT_FOUND;
        Problems.answer(response, told, Text.of(known ? "guard.refused.title" : "guard.nothing.title"), Text.of(known ? "guard.refused" : "guard.nothing"));
    }

    private static boolean push(HttpServletRequest request) {
        return request.getRequestURI().contains("/VAADIN/push") || "push".equals(request.getParameter("v-r"));
    }
}
