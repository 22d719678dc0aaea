package boughwright.people;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.people.Throttle.Kind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

class ThrottleTest {

    @Test
    void pauses_double_from_one_minute_to_thirty() {
        PeopleFixture shop = PeopleFixture.empty();
        for (int i = 0; i < 5; i++) {
            assertThat(shop.throttle.begin(Kind.PERSON, "x")).isEmpty();
        }
        for (int minutes : List.of(1, 2, 4, 8, 16, 30, 30)) {
            Duration pause = Duration.ofMinutes(minutes);
            assertThat(shop.throttle.begin(Kind.PERSON, "x")).contains(pause);
            shop.clock.forward(pause.minusSeconds(1));
            assertThat(shop.throttle.begin(Kind.PERSON, "x")).as("tries in a pause do not lengthen it").contains(Duration.ofSeconds(1));
            shop.clock.forward(Duration.ofSeconds(1));
            assertThat(shop.throttle.begin(Kind.PERSON, "x")).isEmpty();
        }
        assertThat(shop.throttle.begin(Kind.PERSON, "y")).as("others are not meant").isEmpty();
        assertThat(shop.throttle.begin(Kind.TABLET, "x")).isEmpty();
    }

    @Test
    void being_right_forgets_what_was_wrong_and_a_spared_try_does_not_count() {
        PeopleFixture shop = PeopleFixture.empty();
        for (int i = 0; i < 4; i++) {
            shop.throttle.begin(Kind.PERSON, "x");
        }
        for (int i = 0; i < 10; i++) {
            assertThat(shop.throttle.begin(Kind.PERSON, "x")).isEmpty();
            shop.throttle.spare(Kind.PERSON, "x");
        }
        shop.throttle.begin(Kind.PERSON, "x");
        assertThat(shop.throttle.begin(Kind.PERSON, "x")).as("the four before still count").isPresent();
        shop.throttle.right(Kind.PERSON, "x");
        assertThat(shop.throttle.begin(Kind.PERSON, "x")).isEmpty();
    }

    @Test
    void a_day_without_a_wrong_try_forgets_them_and_a_clock_set_back_does_not_shut_for_ever() {
        PeopleFixture shop = PeopleFixture.empty();
        for (int i = 0; i < 5; i++) {
            shop.throttle.begin(Kind.PERSON, "x");
        }
        shop.clock.forward(Duration.ofDays(1).plusSeconds(1));
        for (int i = 0; i < 5; i++) {
            assertThat(shop.throttle.begin(Kind.PERSON, "x")).isEmpty();
        }
        assertThat(shop.throttle.begin(Kind.PERSON, "x")).isPresent();
        shop.clock.forward(Duration.ofDays(-100));
        assertThat(shop.throttle.begin(Kind.PERSON, "x")).isEmpty();
    }

    /** A subject of any length is told apart, although the column is not endless. */
    @Test
    void long_subjects_are_told_apart() {
        PeopleFixture shop = PeopleFixture.empty();
        for (int i = 0; i < 5; i++) {
            shop.throttle.begin(Kind.PERSON, "x".repeat(500) + "1");
        }
        assertThat(shop.throttle.begin(Kind.PERSON, "x".repeat(500) + "1")).isPresent();
        assertThat(shop.throttle.begin(Kind.PERSON, "x".repeat(500) + "2")).isEmpty();
    }

    @Test
    void tries_made_at_once_on_two_kiosks_do_not_slip_past_the_count() throws Exception {
        PeopleFixture one = PeopleFixture.empty();
        PeopleFixture two = one.another(false);
        ExecutorService many = Executors.newFixedThreadPool(16);
        List<Callable<Optional<Duration>>> tries = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            Throttle throttle = (i % 2 == 0 ? one : two).throttle;
            tries.add(() -> throttle.begin(Kind.PERSON, "x"));
        }
        int allowed = 0;
        for (Future<Optional<Duration>> each : many.invokeAll(tries)) {
            allowed += each.get().isEmpty() ? 1 : 0;
        }
        many.shutdown();
        assertThat(allowed).isEqualTo(5);
    }
}
