package boughwright.people;

import static boughwright.people.PeopleFixture.ANYWHERE;
import static boughwright.people.PeopleFixture.PASSWORD;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.factory.PasswordEncoderFactories;

class PeopleTest {

    @Test
    void the_first_manager_is_whoever_can_read_the_log() {
        PeopleFixture shop = PeopleFixture.empty();
        String word = shop.people.firstWord();
        assertThat(shop.people.begun()).isFalse();
        assertThat(shop.people.enter("Ada", PASSWORD, ANYWHERE)).as("nobody is there").isInstanceOf(Entry.Wrong.class);
        assertThat(shop.people.begin("not the word", "Ada", PASSWORD, ANYWHERE)).isInstanceOf(Entry.Wrong.class);
        assertThat(shop.in(shop.people.begin(" " + word.toUpperCase(Locale.ROOT) + " ", "Ada", PASSWORD, ANYWHERE)).person()).contains(new Person("Ada", Role.MANAGER));
        assertThat(shop.people.begin(word, "Eve", PASSWORD, ANYWHERE)).as("only the first comes like that").isInstanceOf(Entry.Wrong.class);
        assertThat(shop.people.enter("ada ", PASSWORD, ANYWHERE)).isInstanceOf(Entry.In.class);
        assertThat(JdbcClient.create(shop.source).sql("select password from person").query(String.class).single()).startsWith("{bcrypt}").doesNotContain(PASSWORD);
    }

    @Test
    void the_one_password_of_an_older_kiosk_is_the_first_manager_s() {
        DataSource source = PeopleFixture.database();
        Flyway.configure().dataSource(source).target("3").load().migrate();
        JdbcClient.create(source).sql("insert into manager (id, password, set_at) values (1, :hash, timestamp '2026-01-02 03:04:05')")
                .param("hash", PasswordEncoderFactories.createDelegatingPasswordEncoder().encode("ten lords a-leaping")).update();
        PeopleFixture shop = PeopleFixture.of(source);
        assertThat(shop.people.begun()).isTrue();
        assertThat(shop.in(shop.people.enter("Manager", "ten lords a-leaping", ANYWHERE)).person()).contains(new Person("Manager", Role.MANAGER));
    }

    @Test
    void somebody_new_begins_with_a_word_once_and_chooses_a_pin() {
        PeopleFixture shop = PeopleFixture.withManager();
        String word = ((People.Change.Word) shop.people.add(" Bo ", Role.STOCK_ROOM, shop.ada())).word();
        assertThat(shop.people.add("bo", Role.ASSOCIATE, shop.ada())).isEqualTo(new People.Change.Refused(People.Why.NAME_TAKEN));
        Starter starter = ((Entry.Starts) shop.people.enter("Bo", word.toUpperCase(Locale.ROOT), ANYWHERE)).starter();
        assertThat(shop.people.choose(starter, "1234", "", ANYWHERE)).isEqualTo(new People.Choice.Refused(Secrets.Fault.PIN_EASY.key()));
        People.Choice choice = shop.people.choose(starter, "4071", "", ANYWHERE);
        assertThat(((People.Choice.Chosen) choice).signedIn().person()).contains(new Person("Bo", Role.STOCK_ROOM));
        assertThat(shop.people.enter("Bo", word, ANYWHERE)).as("used up").isInstanceOf(Entry.Wrong.class);
        assertThat(shop.people.choose(starter, "9056", "", ANYWHERE)).as("used up").isInstanceOf(People.Choice.Refused.class);
    }

    @Test
    void a_word_to_begin_with_is_good_for_three_days() {
        PeopleFixture shop = PeopleFixture.withManager();
        String word = ((People.Change.Word) shop.people.add("Bo", Role.ASSOCIATE, shop.ada())).word();
        shop.clock.forward(Duration.ofDays(3).plusSeconds(1));
        assertThat(shop.people.enter("Bo", word, ANYWHERE)).isInstanceOf(Entry.Wrong.class);
    }

    @Test
    void a_pin_opens_on_an_enrolled_tablet_and_nowhere_else() {
        PeopleFixture shop = PeopleFixture.withManager();
        int bo = shop.add("Bo", Role.ASSOCIATE, "4071");
        Place tablet = shop.tablet("Tablet by the door");
        assertThat(shop.people.pin(bo, "4071", ANYWHERE)).isInstanceOf(Entry.Wrong.class);
        assertThat(shop.people.enter("Bo", "4071", ANYWHERE)).isInstanceOf(Entry.Wrong.class);
        assertThat(shop.people.pin(bo, "4072", tablet)).isInstanceOf(Entry.Wrong.class);
        assertThat(shop.in(shop.people.pin(bo, "4071", tablet)).person()).contains(new Person("Bo", Role.ASSOCIATE));
    }

    @Test
    void a_tablet_that_is_revoked_takes_no_pin_and_whoever_was_there_is_gone() {
        PeopleFixture shop = PeopleFixture.withManager();
        int bo = shop.add("Bo", Role.ASSOCIATE, "4071");
        String mark = shop.tablets.enrol("Tablet by the door", shop.ada());
        assertThat(mark).as("128 bits in base 64").hasSize(22);
        assertThat(JdbcClient.create(shop.source).sql("select hash from tablet").query(String.class).single()).hasSize(64).doesNotContain(mark);
        SignedIn in = shop.in(shop.people.pin(bo, "4071", new Place(shop.tablets.of(mark), "192.0.2.7")));
        shop.tablets.revoke(shop.tablets.all().get(0).id(), shop.ada());
        assertThat(shop.tablets.of(mark)).isEmpty();
        shop.clock.forward(Duration.ofSeconds(3));
        assertThat(in.person()).isEmpty();
    }

    @Test
    void a_change_of_rights_or_secrets_ends_what_was_signed_in() {
        PeopleFixture shop = PeopleFixture.withManager();
        int bo = shop.add("Bo", Role.ASSOCIATE, "4071");
        Place tablet = shop.tablet("Tablet by the door");
        for (Runnable change : List.<Runnable>of(() -> shop.people.changeRole(bo, Role.STOCK_ROOM, shop.ada()), () -> shop.people.switchOff(bo, shop.ada()))) {
            SignedIn in = shop.in(shop.people.pin(bo, "4071", tablet));
            change.run();
            shop.clock.forward(Duration.ofSeconds(3));
            assertThat(in.person()).isEmpty();
        }
        assertThat(shop.people.pin(bo, "4071", tablet)).as("switched off").isInstanceOf(Entry.Wrong.class);
        shop.people.switchOn(bo, shop.ada());
        assertThat(shop.people.pin(bo, "4071", tablet)).isInstanceOf(Entry.In.class);
        shop.people.reset(bo, shop.ada());
        assertThat(shop.people.pin(bo, "4071", tablet)).isInstanceOf(Entry.Wrong.class);
    }

    @Test
    void whoever_changes_their_own_password_stays_and_is_signed_out_elsewhere() {
        PeopleFixture shop = PeopleFixture.withManager();
        SignedIn here = shop.in(shop.people.enter("Ada", PASSWORD, ANYWHERE));
        SignedIn there = shop.in(shop.people.enter("Ada", PASSWORD, ANYWHERE));
        assertThat(shop.people.changePassword(here, "not this", "nine ladies dancing", ANYWHERE)).isEqualTo(new People.Choice.Refused("people.choose.wrong"));
        assertThat(shop.people.changePassword(here, PASSWORD, "password1", ANYWHERE)).isEqualTo(new People.Choice.Refused(Secrets.Fault.PASSWORD_COMMON.key()));
        assertThat(shop.people.changePassword(here, PASSWORD, "nine ladies dancing", ANYWHERE)).isInstanceOf(People.Choice.Chosen.class);
        shop.clock.forward(Duration.ofSeconds(3));
        assertThat(here.person()).isPresent();
        assertThat(there.person()).isEmpty();
        assertThat(shop.people.enter("Ada", "nine ladies dancing", ANYWHERE)).isInstanceOf(Entry.In.class);
    }

    @Test
    void a_sign_in_ends_when_nobody_touches_the_screen_for_as_long_as_the_manager_says() {
        PeopleFixture shop = PeopleFixture.withManager();
        int bo = shop.add("Bo", Role.ASSOCIATE, "4071");
        Place tablet = shop.tablet("Tablet by the door");
        SignedIn in = shop.in(shop.people.pin(bo, "4071", tablet));
        shop.clock.forward(Duration.ofMinutes(4));
        in.touched();
        shop.clock.forward(Duration.ofMinutes(5));
        assertThat(in.person()).isPresent();
        shop.clock.forward(Duration.ofSeconds(1));
        assertThat(in.person()).isEmpty();
        in.touched();
        assertThat(in.person()).as("for ever").isEmpty();
        shop.people.lockAfter(2, shop.ada());
        SignedIn next = shop.in(shop.people.pin(bo, "4071", tablet));
        shop.clock.forward(Duration.ofSeconds(121));
        assertThat(next.person()).isEmpty();
        SignedIn elsewhere = shop.in(shop.people.enter("Ada", PASSWORD, ANYWHERE));
        shop.clock.forward(Duration.ofMinutes(30));
        assertThat(elsewhere.person()).isPresent();
    }

    @Test
    void a_sign_in_lasts_twelve_hours_at_most_and_not_longer_when_the_clock_is_set_back() {
        PeopleFixture shop = PeopleFixture.withManager();
        SignedIn in = shop.in(shop.people.enter("Ada", PASSWORD, ANYWHERE));
        for (int i = 0; i < 36; i++) {
            shop.clock.forward(Duration.ofMinutes(20));
            in.touched();
        }
        assertThat(in.person()).isPresent();
        shop.clock.forward(Duration.ofSeconds(1));
        assertThat(in.person()).isEmpty();
        SignedIn next = shop.in(shop.people.enter("Ada", PASSWORD, ANYWHERE));
        shop.clock.forward(Duration.ofHours(-1));
        assertThat(next.person()).isEmpty();
    }

    @Test
    void the_last_manager_stays_one() {
        PeopleFixture shop = PeopleFixture.withManager();
        int ada = shop.id("Ada");
        People.Change refused = new People.Change.Refused(People.Why.LAST_MANAGER);
        assertThat(shop.people.changeRole(ada, Role.ASSOCIATE, shop.ada())).isEqualTo(refused);
        assertThat(shop.people.switchOff(ada, shop.ada())).isEqualTo(refused);
        assertThat(shop.people.reset(ada, shop.ada())).isEqualTo(refused);
        shop.add("Bea", Role.MANAGER, "407193");
        assertThat(shop.people.changeRole(ada, Role.ASSOCIATE, shop.ada())).isEqualTo(new People.Change.Done());
    }

    @Test
    void two_managers_who_take_each_other_s_rights_at_once_do_not_leave_the_shop_without_one() throws Exception {
        PeopleFixture shop = PeopleFixture.withManager();
        for (int round = 0; round < 10; round++) {
            String other = "Bea " + round;
            int bea = shop.add(other, Role.MANAGER, "407193");
            int ada = shop.id("Ada");
            PeopleFixture second = shop.another(false);
            ExecutorService both = Executors.newFixedThreadPool(2);
            Future<People.Change> one = both.submit(() -> shop.people.changeRole(ada, Role.ASSOCIATE, new Person(other, Role.MANAGER)));
            Future<People.Change> two = both.submit(() -> second.people.changeRole(bea, Role.ASSOCIATE, shop.ada()));
            assertThat(List.of(one.get(), two.get())).contains(new People.Change.Done());
            both.shutdown();
            assertThat(shop.people.all().stream().filter(c -> c.person().role() == Role.MANAGER)).hasSize(1);
            shop.people.changeRole(ada, Role.MANAGER, shop.ada());
            shop.people.changeRole(bea, Role.ASSOCIATE, shop.ada());
        }
    }

    @Test
    void only_a_manager_keeps_the_people() {
        PeopleFixture shop = PeopleFixture.withManager();
        Person bo = new Person("Bo", Role.MERCHANDISER);
        assertThatThrownBy(() -> shop.people.add("Cy", Role.MANAGER, bo)).isInstanceOf(SecurityException.class);
        assertThatThrownBy(() -> shop.people.reset(1, bo)).isInstanceOf(SecurityException.class);
        assertThatThrownBy(() -> shop.people.lockAfter(60, bo)).isInstanceOf(SecurityException.class);
    }

    @Test
    void a_manager_s_pin_is_longer_and_none_is_taken_along_into_that_role() {
        PeopleFixture shop = PeopleFixture.withManager();
        int bo = shop.add("Bo", Role.ASSOCIATE, "4071");
        Place tablet = shop.tablet("Tablet by the door");
        shop.people.changeRole(bo, Role.MANAGER, shop.ada());
        assertThat(shop.people.pin(bo, "4071", tablet)).isInstanceOf(Entry.Wrong.class);
        SignedIn ada = shop.in(shop.people.enter("Ada", PASSWORD, ANYWHERE));
        assertThat(shop.people.changePin(ada, PASSWORD, "4071", ANYWHERE)).isEqualTo(new People.Choice.Refused("people.fault.pin-manager"));
        assertThat(shop.people.changePin(ada, PASSWORD, "407193", ANYWHERE)).isInstanceOf(People.Choice.Chosen.class);
    }

    @Test
    void a_shop_whose_managers_have_lost_their_passwords_is_opened_by_whoever_can_start_it_anew() {
        PeopleFixture shop = PeopleFixture.withManager();
        PeopleFixture again = shop.another(true);
        assertThat(again.people.begun()).isFalse();
        assertThat(again.people.begin(again.people.firstWord(), "Ada", "nine ladies dancing", ANYWHERE)).isInstanceOf(Entry.In.class);
        assertThat(shop.people.enter("Ada", "nine ladies dancing", ANYWHERE)).isInstanceOf(Entry.In.class);
        assertThat(shop.people.enter("Ada", PASSWORD, ANYWHERE)).isInstanceOf(Entry.Wrong.class);
    }

    @Test
    void five_wrong_tries_make_a_pause_for_that_person_and_a_known_tablet_stays_open() {
        PeopleFixture shop = PeopleFixture.withManager();
        int bo = shop.add("Bo", Role.ASSOCIATE, "4071");
        Place tablet = shop.tablet("Tablet by the door");
        for (int i = 0; i < 5; i++) {
            assertThat(shop.people.enter("Bo", "guess " + i, ANYWHERE)).isInstanceOf(Entry.Wrong.class);
        }
        assertThat(shop.people.enter("Bo", "guess", new Place(Optional.empty(), "198.51.100.9"))).as("from elsewhere too").isEqualTo(new Entry.Wait(Duration.ofMinutes(1)));
        assertThat(shop.people.pin(bo, "4071", tablet)).isInstanceOf(Entry.In.class);
        assertThat(shop.people.enter("Ada", PASSWORD, ANYWHERE)).as("others are not shut out").isInstanceOf(Entry.In.class);
    }

    @Test
    void an_unknown_name_is_answered_like_a_known_one_to_the_pause() {
        PeopleFixture shop = PeopleFixture.withManager();
        for (String name : List.of("Ada", "Nobody")) {
            for (int i = 0; i < 5; i++) {
                assertThat(shop.people.enter(name, "guess " + i, ANYWHERE)).isInstanceOf(Entry.Wrong.class);
            }
            assertThat(shop.people.enter(name, "guess", ANYWHERE)).isEqualTo(new Entry.Wait(Duration.ofMinutes(1)));
        }
    }
}
