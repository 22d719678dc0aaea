package boughwright.guard;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.people.Guesses;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockFilterChain;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

class RateLimitsTest {

    private final AtomicLong nanos = new AtomicLong(7);
    private final Guesses guesses = new Guesses();
    private final RateLimits limits = new RateLimits(3, 60, guesses.throttle(), guesses.tablets(), nanos::get);

    private MockHttpServletResponse ask(String method, String path, String address, int answered) throws Exception {
        MockHttpServletRequest request = new MockHttpServletRequest(method, path);
        request.setRemoteAddr(address);
        return ask(request, answered);
    }

    private MockHttpServletResponse ask(MockHttpServletRequest request, int answered) throws Exception {
        MockHttpServletResponse response = new MockHttpServletResponse();
        limits.doFilter(request, response, new MockFilterChain() {
            @Override
            public void doFilter(jakarta.servlet.ServletRequest asked, jakarta.servlet.ServletResponse answer) {
                ((MockHttpServletResponse) answer).setStatus(answered);
            }
        });
        return response;
    }

    @Test
    void one_address_makes_so_many_proposals_a_minute_and_is_told_when_to_ask_again() throws Exception {
        for (int i = 0; i < 3; i++) {
            assertThat(ask("POST", "/api/proposals", "192.0.2.1", 201).getStatus()).isEqualTo(201);
        }
        MockHttpServletResponse late = ask("POST", "/api/colours", "192.0.2.1", 200);
        assertThat(late.getStatus()).isEqualTo(429);
        assertThat(late.getHeader("Retry-After")).as("RFC 9110, 10.2.3; three in a minute are one in 20 s").isEqualTo("20");
        assertThat(late.getContentType()).isEqualTo("application/problem+json");
        assertThat(ask("POST", "/api/proposals", "192.0.2.2", 201).getStatus()).as("another address").isEqualTo(201);
        assertThat(ask("GET", "/api/products", "192.0.2.1", 200).getStatus()).as("reading is counted for itself").isEqualTo(200);
        nanos.addAndGet(Duration.ofSeconds(20).toNanos());
        assertThat(ask("POST", "/api/proposals", "192.0.2.1", 201).getStatus()).isEqualTo(201);
        assertThat(ask("POST", "/api/proposals", "192.0.2.1", 201).getStatus()).isEqualTo(429);
    }

    /** A household has a /64 of IPv6 addresses at least (RFC 6177). */
    @Test
    void addresses_that_one_household_has_count_as_one() throws Exception {
        for (int i = 1; i <= 3; i++) {
            ask("POST", "/api/proposals", "2001:db8:1:2::" + i, 201);
        }
        assertThat(ask("POST", "/api/proposals", "2001:db8:1:2:aaaa::1", 201).getStatus()).isEqualTo(429);
        assertThat(ask("POST", "/api/proposals", "2001:db8:1:3::1", 201).getStatus()).isEqualTo(201);
    }

    @Test
    void what_a_caller_claims_of_its_address_is_not_believed() throws Exception {
        for (int i = 0; i < 4; i++) {
            MockHttpServletRequest request = new MockHttpServletRequest("POST", "/api/proposals");
            request.setRemoteAddr("192.0.2.1");
            request.addHeader("X-Forwarded-For", "198.51.100." + i);
            assertThat(ask(request, 201).getStatus()).isEqualTo(i < 3 ? 201 : 429);
        }
    }

    @Test
    void screens_and_their_parts_are_not_counted() throws Exception {
        for (int i = 0; i < 200; i++) {
            assertThat(ask("POST", "/?v-r=uidl", "192.0.2.1", 200).getStatus()).isEqualTo(200);
            assertThat(ask("GET", "/lib/boughwright.css", "192.0.2.1", 200).getStatus()).isEqualTo(200);
        }
    }

    @Test
    void whoever_guesses_codes_is_put_off_and_the_shop_s_own_tablets_are_not() throws Exception {
        for (int i = 0; i < 30; i++) {
            assertThat(ask("GET", "/at-home/kelp-4-moss", "192.0.2.1", 404).getStatus()).isEqualTo(404);
            nanos.addAndGet(Duration.ofSeconds(1).toNanos());
        }
        MockHttpServletResponse late = ask("GET", "/api/proposals/kelp-4-moss", "192.0.2.1", 200);
        assertThat(late.getStatus()).isEqualTo(429);
        assertThat(late.getHeader("Retry-After")).isEqualTo("60");
        assertThat(ask("GET", "/api/products", "192.0.2.1", 200).getStatus()).isEqualTo(200);
        assertThat(ask("GET", "/at-home/kelp-4-moss", "192.0.2.2", 200).getStatus()).isEqualTo(200);
        MockHttpServletRequest tablet = new MockHttpServletRequest("GET", "/api/proposals/kelp-4-moss/scene.json");
        tablet.setRemoteAddr("192.0.2.1");
        tablet.setCookies(new jakarta.servlet.http.Cookie("boughwright-tablet", guesses.enrolled()));
        assertThat(ask(tablet, 200).getStatus()).isEqualTo(200);
    }

    @Test
    void no_limit_is_none() throws Exception {
        RateLimits none = new RateLimits(0, 0, guesses.throttle(), guesses.tablets(), nanos::get);
        for (int i = 0; i < 1_000; i++) {
            MockHttpServletResponse response = new MockHttpServletResponse();
            none.doFilter(new MockHttpServletRequest("POST", "/api/proposals"), response, new MockFilterChain());
            assertThat(response.getStatus()).isEqualTo(200);
        }
    }
}
