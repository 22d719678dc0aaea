package boughwright.publishing;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.Boughwright;
import boughwright.catalogue.Product;
import boughwright.consultation.Consultations;
import boughwright.consultation.Saved;
import boughwright.house.HouseRules;
import boughwright.needs.Adjustments;
import boughwright.people.Throttle;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.shelf.Reservations;
import boughwright.shelf.Shelf;
import boughwright.shelf.ShelfEvent;
import boughwright.storage.PostgresFixture;
import boughwright.storage.Transactions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;

/** Two whole kiosks on two ports with one PostgreSQL, which both started at once while it was empty. */
class TwoKiosksTest {

    private static final String BRIEF = "{\"tree\": {\"height\": \"9 ft\"}}";
    /** How long another kiosk may take to see what was done on one; it looks each second. */
    private static final Duration SOON = Duration.ofSeconds(5);

    private static ConfigurableApplicationContext here;
    private static ConfigurableApplicationContext there;

    @BeforeAll
    static void startBoth() {
        String address = PostgresFixture.address();
        CompletableFuture<ConfigurableApplicationContext> other = CompletableFuture.supplyAsync(() -> start(address));
        here = start(address);
        there = other.join();
        here.getBean(ShopDoor.class).designer();
        there.getBean(ShopDoor.class).designer();
    }

    private static ConfigurableApplicationContext start(String address) {
        return SpringApplication.run(Boughwright.class, "--server.port=0", "--spring.profiles.active=postgresql", "--spring.datasource.url=" + address,
                "--spring.datasource.username=postgres", "--logging.level.root=WARN");
    }

    @AfterAll
    static void stopBoth() {
        here.close();
        there.close();
    }

    private static void soon(BooleanSupplier so) throws InterruptedException {
        long until = System.nanoTime() + SOON.toNanos();
        while (!so.getAsBoolean() && System.nanoTime() < until) {
            Thread.sleep(50);
        }
        assertThat(so.getAsBoolean()).as("within " + SOON.toSeconds() + " seconds").isTrue();
    }

    private static int publish(ConfigurableApplicationContext kiosk, String title, UnaryOperator<HouseRules> change) {
        Publisher publisher = kiosk.getBean(Publisher.class);
        int live = kiosk.getBean(ShopDoor.class).liveEdition();
        return ((Publisher.Outcome.Published) publisher.publish(change.apply(publisher.rules(live)), live,
                new Publisher.Wish(title, "", "Ada", kiosk.getBean(Editions.class).today(), true, "tried"))).edition();
    }

    private static Product product(ConfigurableApplicationContext kiosk, String sku) {
        return kiosk.getBean(Shelf.class).catalogue().product(sku).orElseThrow();
    }

    private static String scarce() {
        return here.getBean(Shelf.class).onSale().stream().filter(p -> p.stock() > 20).findFirst().orElseThrow().sku();
    }

    @Test
    void both_found_the_empty_database_and_one_of_them_filled_it() {
        assertThat(here.getBean(Editions.class).all().stream().filter(e -> e.origin() == KeptEdition.Origin.FOLDER)).hasSize(1);
        assertThat(here.getBean(Shelf.class).events(99).stream().filter(e -> e.kind() == ShelfEvent.Kind.FOLDER)).hasSize(1);
        assertThat(there.getBean(Shelf.class).onSale()).hasSameSizeAs(here.getBean(Shelf.class).onSale()).isNotEmpty();
    }

    @Test
    void an_edition_published_or_taken_back_on_one_is_live_on_the_other() throws Exception {
        ShopDoor other = there.getBean(ShopDoor.class);
        int before = other.liveEdition();

        int edition = publish(here, "Ribbon for two", r -> OpenShop.moreRibbon(r, "3.2"));
        soon(() -> other.liveEdition() == edition);
        assertThat(other.designer().rulebook().edition().title()).isEqualTo("Ribbon for two");

        other.rollBack(before, "Ben");
        soon(() -> here.getBean(ShopDoor.class).liveEdition() == before);
    }

    @Test
    void a_product_changed_on_one_is_proposed_so_on_the_other() throws Exception {
        Product first = there.getBean(Shelf.class).onSale().get(0);

        here.getBean(Shelf.class).edit(first.sku(), "price", "987.65", "Ada");

        soon(() -> there.getBean(ShopDoor.class).designer().catalogue().product(first.sku()).orElseThrow().price().decimal().equals("987.65"));
    }

    @Test
    void packs_promised_on_one_cannot_be_had_on_the_other() throws Exception {
        String sku = scarce();
        int stock = product(there, sku).stock();
        List<CompletableFuture<Boolean>> wishes = new ArrayList<>();
        for (int i = 0; i < 2 * stock; i++) {
            ConfigurableApplicationContext kiosk = i % 2 == 0 ? here : there;
            String code = "kelp-2-" + i;
            wishes.add(CompletableFuture.supplyAsync(() -> promised(kiosk, code, sku)));
        }

        assertThat(wishes.stream().filter(CompletableFuture::join)).hasSize(stock);
        soon(() -> product(here, sku).stock() == 0 && product(there, sku).stock() == 0);
    }

    private static boolean promised(ConfigurableApplicationContext kiosk, String code, String sku) {
        return kiosk.getBean(Transactions.class).run(() -> kiosk.getBean(Reservations.class).take(code, new TreeMap<>(Map.of(sku, 1))).isEmpty());
    }

    @Test
    void a_consultation_begun_on_one_goes_on_on_the_other() {
        Designer designer = here.getBean(ShopDoor.class).designer();
        Outcome outcome = designer.propose(BRIEF, Adjustments.NONE, Designer.SEED);
        Saved saved = here.getBean(Consultations.class).begin(BRIEF, outcome);

        Saved next = there.getBean(Consultations.class).go(saved.code(), BRIEF, outcome);

        assertThat(next.revision()).isEqualTo(2);
        assertThat(here.getBean(Consultations.class).open(saved.spoken())).contains(next);
    }

    @Test
    void wrong_tries_to_sign_in_count_together() {
        Throttle one = here.getBean(Throttle.class);
        Throttle other = there.getBean(Throttle.class);
        int free = 0;
        while (free < 50 && (free % 2 == 0 ? one : other).begin(Throttle.Kind.PERSON, "somebody").isEmpty()) {
            free++;
        }

        assertThat(free).as("tries before the first pause, on both together").isEqualTo(5);
        assertThat(one.begin(Throttle.Kind.PERSON, "somebody")).isPresent();
        assertThat(other.begin(Throttle.Kind.PERSON, "somebody")).isPresent();
    }
}
