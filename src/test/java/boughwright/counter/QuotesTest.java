package boughwright.counter;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskServer;
import boughwright.consultation.Consultations;
import boughwright.consultation.Interviews;
import boughwright.consultation.Saved;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.publishing.ShopDoor;
import boughwright.quote.Quote;
import boughwright.quote.QuoteLine;
import boughwright.shelf.Shelf;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

class QuotesTest extends KioskServer {

    private static final String BRIEF = "{\"tree\": {\"height\": \"7 ft 6 in\"}, \"look\": \"harbour-light\"}";

    @Autowired
    private ShopDoor shop;
    @Autowired
    private Consultations consultations;
    @Autowired
    private Interviews interviews;
    @Autowired
    private Quotes quotes;
    @Autowired
    private Holds holds;
    @Autowired
    private Counter counter;
    @Autowired
    private Shelf shelf;
    @Autowired
    private JdbcClient database;

    private String emptied = "";
    private String stock = "";

    /** Other tests share the shelf. */
    @AfterEach
    void restock() {
        if (!emptied.isEmpty()) {
            shelf.edit(emptied, "stock", stock, "Ada");
        }
    }

    private Saved plan() {
        return consultations.begin(BRIEF, shop.designer().propose(BRIEF, Adjustments.NONE, Designer.SEED));
    }

    @Test
    void a_quote_is_kept_as_it_was_made_and_a_double_tap_makes_one() {
        Saved plan = plan();
        Quote quote = quotes.make(plan.code(), "Ada", "tap " + plan.code()).orElseThrow();
        Quote again = quotes.make(plan.code(), "Ada", "tap " + plan.code()).orElseThrow();
        assertThat(again).isEqualTo(quote);
        assertThat(quotes.all(plan.code())).containsExactly(quote);
        assertThat(quotes.holds(quote, plan)).isTrue();
        assertThat(quotes.make(plan.code(), "Ada", "another " + plan.code()).orElseThrow().number()).isEqualTo(2);
        assertThat(quotes.make("nobody-2-nowhere", "Ada", "no")).isEmpty();
    }

    @Test
    void what_ran_out_since_the_last_quote_is_named_and_told_to_the_manager() {
        Saved plan = plan();
        QuoteLine line = quotes.make(plan.code(), "Ada", "first " + plan.code()).orElseThrow().lines().get(0);
        emptied = line.sku();
        stock = shelf.cells(emptied).get("stock");
        shelf.edit(emptied, "stock", "0", "Ada");

        Quote second = quotes.make(plan.code(), "Ada", "second " + plan.code()).orElseThrow();

        assertThat(second.revision()).isEqualTo(2);
        assertThat(second.substitutions()).anySatisfy(s -> assertThat(s.was()).isEqualTo(line.name()));
        assertThat(second.lines()).noneSatisfy(l -> assertThat(l.sku()).isEqualTo(emptied));
        assertThat(database.sql("select count(*) from blocked where sku = :sku and code = :code and what = 'PLAN'").param("sku", emptied).param("code", plan.code())
                .query(Integer.class).single()).isEqualTo(1);
    }

    @Test
    void a_plan_that_is_held_stays_what_it_was_though_nothing_of_it_is_left_for_others() {
        Saved plan = plan();
        var proposal = ((boughwright.proposal.Outcome.Made) consultations.reopen(plan.code()).orElseThrow().outcome()).proposal();
        Pack scarce = Pack.of(proposal).get(0);
        emptied = scarce.sku();
        stock = shelf.cells(emptied).get("stock");
        int others = Integer.parseInt(stock) - shelf.catalogue().product(emptied).orElseThrow().stock();
        shelf.edit(emptied, "stock", String.valueOf(scarce.packs() + others), "Ada");
        assertThat(holds.hold(plan.code(), Pack.of(proposal), Duration.ofHours(1), "Ada", "hold " + plan.code())).isInstanceOf(Holding.Held.class);

        assertThat(shop.designer().catalogue().product(emptied).orElseThrow().stock()).isZero();
        assertThat(consultations.reopen(plan.code()).orElseThrow().moved()).isFalse();
        // Somebody else's plan does without it.
        Saved other = plan();
        assertThat(other.proposal()).doesNotContain("\"sku\" : \"" + emptied + "\"");

        holds.collect(plan.code(), Map.of(emptied, scarce.packs()), "collect " + plan.code());
        assertThat(holds.collected(plan.code())).containsExactly(Map.entry(emptied, scarce.packs()));
        holds.release(plan.code());
    }

    @Test
    void a_consultation_is_found_by_part_of_its_code_or_by_its_name_and_copied_without_touching_it() {
        Saved plan = plan();
        interviews.nickname(plan.code(), "Uncle Theo");
        assertThat(counter.find("theo", 10)).extracting(Entry::code).contains(plan.code());
        assertThat(counter.find(plan.spoken(), 10)).extracting(Entry::code).containsExactly(plan.code());
        assertThat(counter.find("%", 10)).isNotEmpty();

        String copy = counter.copy(plan.code()).orElseThrow();

        assertThat(copy).isNotEqualTo(plan.code());
        assertThat(interviews.open(copy).orElseThrow().follows()).hasValue(plan.code());
        assertThat(consultations.open(copy).orElseThrow().brief()).isEqualTo(plan.brief());
        assertThat(consultations.open(plan.code())).hasValue(plan);
        assertThat(counter.entry(copy).orElseThrow().state()).isEqualTo(Entry.State.PLANNED);
        assertThat(counter.copy("nobody-2-nowhere")).isEmpty();
    }
}
