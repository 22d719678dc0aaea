package boughwright.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.Product;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Level;
import boughwright.kit.Conflict;
import boughwright.kit.KitLine;
import boughwright.kit.Patience;
import boughwright.kit.Swap;
import boughwright.kit.Wish;
import boughwright.measure.Money;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.needs.Taste;
import boughwright.needs.Trait;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A kit bends to the customer's hand, and no further than it must. */
class BendingTest {

    private static final String BRIEF = "{\"tree\":{\"height\":\"9 ft\"},\"budget\":\"800.00\"}";
    private static final Designer SEASON = ProposalFixture.season();
    private static final Proposal START = ProposalFixture.made(SEASON, BRIEF);
    private static final Adjustments KEEPING = Adjustments.NONE.keeping(START.products());

    private static Proposal bent(Adjustments hand) {
        return ProposalFixture.made(SEASON, BRIEF, hand);
    }

    private static Set<String> changed(Proposal after) {
        return changed(START, after);
    }

    private static Set<String> changed(Proposal before, Proposal after) {
        Set<String> changed = new HashSet<>();
        after.products().forEach((slot, sku) -> {
            if (!sku.equals(before.products().get(slot))) {
                changed.add(slot);
            }
        });
        return changed;
    }

    @Test
    void with_nothing_asked_nothing_changes() {
        assertThat(changed(bent(KEEPING))).isEmpty();
        assertThat(KitChanges.between(START, bent(KEEPING), SEASON)).isEmpty();
    }

    @Test
    void a_swap_brings_what_was_foretold_and_says_so() {
        for (String slot : List.of("florals/spray/1", "height-stem", "ribbon/base-ribbon", "ornaments/filler-ball/80mm")) {
            for (Swap swap : SEASON.swaps(START, slot, 3, Patience.usual())) {
                if (!swap.possible()) {
                    continue;
                }
                Proposal after = bent(KEEPING.withProduct(slot, swap.product().sku()));
                assertThat(after.kit().total().coins() - START.kit().total().coins()).as("%s in %s", swap.product().sku(), slot).isEqualTo(swap.coins());
                Set<String> also = changed(after);
                assertThat(also.remove(slot)).isTrue();
                assertThat(also).as("other lines with %s in %s", swap.product().sku(), slot).containsExactlyInAnyOrderElementsOf(swap.alsoChanged());
                assertThat(KitChanges.between(START, after, SEASON)).anySatisfy(c -> assertThat(c).contains(swap.product().name(), "You chose it."));
            }
        }
    }

    @Test
    void swaps_are_ranked_by_what_they_do_to_the_score() {
        List<Swap> swaps = SEASON.swaps(START, "florals/spray/2", 6, Patience.usual()).stream().filter(Swap::possible).toList();
        assertThat(swaps).hasSizeGreaterThan(2).isSortedAccordingTo((a, b) -> Double.compare(b.points(), a.points()));
        assertThat(swaps).as("the best kit has no better neighbour").allSatisfy(s -> assertThat(s.points()).isLessThanOrEqualTo(1e-6));
    }

    @Test
    void what_is_not_wanted_goes_and_only_what_must_follow_follows() {
        // Frost Fair is the look that likes glitter.
        String frosty = BRIEF.replace("\"budget\"", "\"look\":\"frost-fair\",\"budget\"");
        Proposal before = ProposalFixture.made(SEASON, frosty);
        Proposal after = ProposalFixture.made(SEASON, frosty, Adjustments.NONE.keeping(before.products()).withTaste(Taste.no(Trait.FINISH, "glitter")));
        assertThat(after.kit().lines()).allSatisfy(l -> assertThat(after.product(l).finish()).isNotEqualTo(Finish.GLITTER));
        Set<String> glittering = new HashSet<>();
        before.kit().lines().stream().filter(l -> before.product(l).finish() == Finish.GLITTER).forEach(l -> glittering.add(l.slot()));
        assertThat(glittering).isNotEmpty();
        assertThat(changed(before, after)).containsAll(glittering).hasSizeLessThanOrEqualTo(glittering.size() + 1);
        assertThat(KitChanges.between(before, after, SEASON)).anySatisfy(c -> assertThat(c).contains("You asked for no glitter."));
    }

    @Test
    void a_product_that_is_left_out_does_not_come_back() {
        KitLine spray = START.kit().line("florals/spray/1").orElseThrow();
        Proposal after = bent(KEEPING.withTaste(Taste.no(Trait.PRODUCT, spray.sku())));
        assertThat(after.kit().lines()).extracting(KitLine::sku).doesNotContain(spray.sku());
        assertThat(changed(after)).contains("florals/spray/1");
    }

    @Test
    void a_layer_keeps_to_its_cap() {
        BigDecimal before = spent(START, Layer.ORNAMENTS);
        Money cap = new Money(before.multiply(new BigDecimal("0.80")).setScale(2, RoundingMode.DOWN), START.kit().total().currency());
        Proposal after = bent(KEEPING.withCap(Layer.ORNAMENTS, cap));
        assertThat(spent(after, Layer.ORNAMENTS)).isLessThanOrEqualTo(cap.amount());
        assertThat(changed(after)).allSatisfy(slot -> assertThat(slot).startsWith("ornaments"));
    }

    private static BigDecimal spent(Proposal proposal, Layer layer) {
        return proposal.kit().lines().stream().filter(l -> l.layer() == layer).map(l -> l.price().amount()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Test
    void a_dropped_layer_has_no_line_and_no_piece() {
        Proposal after = bent(KEEPING.withDropped(Layer.ORNAMENTS));
        assertThat(after.kit().lines()).noneMatch(l -> l.layer() == Layer.ORNAMENTS);
        assertThat(after.layout().pieces()).noneMatch(p -> p.layer() == Layer.ORNAMENTS);
        assertThat(changed(after)).isEmpty();
        assertThat(after.needs().need("ornaments/filler-ball/80mm").orElseThrow().reason().text()).startsWith("Left out by hand.");
    }

    @Test
    void a_price_level_that_is_preferred_is_taken_where_the_shelf_has_it() {
        long before = START.kit().lines().stream().filter(l -> l.layer() == Layer.ORNAMENTS && START.product(l).level() == Level.VALUE).count();
        Proposal after = bent(KEEPING.withLevel(Layer.ORNAMENTS, "value"));
        assertThat(after.kit().lines().stream().filter(l -> l.layer() == Layer.ORNAMENTS && after.product(l).level() == Level.VALUE).count()).isGreaterThan(before);
        assertThat(changed(after)).allSatisfy(slot -> assertThat(slot).startsWith("ornaments"));
        assertThat(KitChanges.between(START, after, SEASON)).anySatisfy(c -> assertThat(c).contains("at the price level you chose"));
    }

    @Test
    void the_same_changes_give_the_same_bytes() {
        Adjustments hand = KEEPING.withTaste(Taste.no(Trait.MATERIAL, "glass")).withQuantity("florals/spray/1", 12);
        assertThat(ProposalJson.text(ProposalJson.of(bent(hand)))).isEqualTo(ProposalJson.text(ProposalJson.of(bent(hand))));
    }

    @Test
    void gold_features_without_glass_or_metal_for_little_money_is_a_minimal_conflict_told_in_plain_words() {
        String brief = "{\"tree\":{\"height\":\"9 ft\"},\"budget\":\"440.00\"}";
        Adjustments hand = Adjustments.NONE.withTaste(Taste.only(Trait.FAMILY, "gold", Role.FEATURE_ORNAMENT)).withTaste(Taste.no(Trait.MATERIAL, "glass"));
        Outcome outcome = SEASON.propose(brief, hand, 1);
        assertThat(outcome).isInstanceOf(Outcome.NoKitFits.class);
        Conflict conflict = ((Outcome.NoKitFits) outcome).conflict();
        AskedFor asked = new AskedFor(ProposalFixture.rulebook(), SEASON.catalogue(), ProposalFixture.brief(brief), hand);
        minimal(asked, conflict);
        assertThat(conflict.waysOut()).allSatisfy(w -> assertThat(w.text()).isNotBlank());
    }

    @Test
    void wishes_that_clash_on_seeded_briefs_clash_minimally_and_every_way_out_leads_out() {
        List<Taste> tastes = List.of(Taste.no(Trait.FINISH, "glitter"), Taste.no(Trait.MATERIAL, "plastic"), Taste.no(Trait.FAMILY, "green"),
                Taste.no(Trait.TEXTURE, "leafy"), Taste.only(Trait.FAMILY, "gold", Role.FEATURE_ORNAMENT), Taste.only(Trait.FAMILY, "red", Role.FILLER_BALL),
                Taste.no(Trait.MATERIAL, "fabric"), Taste.only(Trait.FAMILY, "blue", Role.SPRAY));
        int clashes = 0;
        for (int seed = 1; seed <= 40; seed++) {
            var random = new SplittableRandom(seed);
            Adjustments hand = Adjustments.NONE;
            for (Taste taste : tastes) {
                hand = random.nextInt(3) == 0 ? hand.withTaste(taste) : hand;
            }
            hand = random.nextBoolean() ? hand.withQuantity("florals/spray/1", 60) : hand;
            hand = random.nextBoolean() ? hand.withCap(Layer.ORNAMENTS, Money.ofCoins(4_000, START.kit().total().currency())) : hand;
            String brief = "{\"tree\":{\"height\":\"8 ft\"},\"abundance\":\"" + (random.nextBoolean() ? "lavish" : "generous") + "\",\"budget\":\""
                    + (350 + random.nextInt(500)) + ".00\"}";
            Outcome outcome = SEASON.propose(brief, hand, 1);
            if (outcome instanceof Outcome.NoKitFits none) {
                clashes++;
                AskedFor asked = new AskedFor(ProposalFixture.rulebook(), SEASON.catalogue(), ProposalFixture.brief(brief), hand);
                minimal(asked, none.conflict());
                for (Conflict.WayOut way : none.conflict().waysOut()) {
                    Set<Wish> held = new HashSet<>(asked.inOrder());
                    if (way.steps().stream().noneMatch(s -> s.instead().isPresent() && !s.wish().equals("budget") && !s.wish().startsWith("cap:"))) {
                        way.steps().forEach(s -> held.removeIf(w -> w.id().equals(s.wish())));
                        assertThat(ProposalFixture.least(asked.holding(held))).as("%s of seed %s", way, seed).contains(way.total());
                    }
                }
            }
        }
        assertThat(clashes).as("that clashes were tried").isGreaterThan(10);
    }

    /** All of it cannot hold; without any one of it, the rest can. */
    private static void minimal(AskedFor asked, Conflict conflict) {
        Set<Wish> clashing = new HashSet<>();
        asked.inOrder().stream().filter(w -> conflict.wishes().stream().anyMatch(c -> c.id().equals(w.id()))).forEach(clashing::add);
        assertThat(clashing).isNotEmpty();
        assertThat(ProposalFixture.least(asked.holding(clashing))).isEmpty();
        for (Wish wish : clashing) {
            Set<Wish> rest = new HashSet<>(clashing);
            rest.remove(wish);
            assertThat(ProposalFixture.least(asked.holding(rest))).as("without %s of %s", wish, clashing).isPresent();
        }
    }

    @Test
    void the_order_of_importance_decides_which_clash_is_told() {
        String brief = "{\"tree\":{\"height\":\"9 ft\"},\"budget\":\"460.00\",\"abundance\":\"lavish\"}";
        Outcome.NoKitFits none = (Outcome.NoKitFits) SEASON.propose(brief, Adjustments.NONE.withImportance(List.of("abundance:lavish", "budget")), 1);
        assertThat(none.wishes()).first().satisfies(w -> assertThat(w.id()).isEqualTo("abundance:lavish"));
        assertThat(none.conflict().wishes()).extracting(Conflict.Wished::id).containsExactly("abundance:lavish", "budget");
    }

    @Test
    void a_pinned_product_that_is_short_on_the_shelf_is_answered_with_the_nearest() {
        Product few = SEASON.catalogue().inRole(Role.SPRAY).stream().filter(p -> p.piecesInStock() > 0 && p.piecesInStock() < 200).findFirst().orElseThrow();
        Outcome outcome = SEASON.propose("{\"tree\":{\"height\":\"9 ft\"}}",
                Adjustments.NONE.withProduct("florals/spray/1", few.sku()).withQuantity("florals/spray/1", few.piecesInStock() + 1), 1);
        Conflict conflict = ((Outcome.NoKitFits) outcome).conflict();
        assertThat(conflict.waysOut()).anySatisfy(w -> {
            assertThat(w.steps().get(0).wish()).isEqualTo("product:florals/spray/1");
            assertThat(w.steps().get(0).instead()).isPresent();
        }).anySatisfy(w -> assertThat(w.steps()).containsExactly(new Conflict.Step("quantity:florals/spray/1",
                Optional.of(String.valueOf(few.piecesInStock())))));
    }

    @Test
    void changes_written_and_read_again_are_the_same() {
        Adjustments all = KEEPING.withTaste(Taste.only(Trait.FAMILY, "gold", Role.FEATURE_ORNAMENT)).withTaste(Taste.no(Trait.FINISH, "glitter"))
                .withCap(Layer.FLORALS, Money.ofCoins(12_050, START.kit().total().currency())).withLevel(Layer.RIBBON, "fine").withDropped(Layer.ACCENTS)
                .withQuantity("florals/spray/1", 7).withProduct("height-stem", START.products().get("height-stem")).withImportance(List.of("budget"));
        String json = AdjustmentsJson.of(all).toString();
        assertThat(AdjustmentsJson.stored(json)).isEqualTo(all);
        assertThat(AdjustmentsJson.read(json, START.kit().total().currency(), SEASON.catalogue())).isEqualTo(new AdjustmentsJson.Reading.Read(all));
    }

    @Test
    void faults_in_changes_are_all_told_with_their_place() {
        AdjustmentsJson.Reading reading = AdjustmentsJson.read("{\"quantities\":{\"a\":-1},\"products\":{\"b\":\"NO-SUCH\"},\"caps\":{\"roof\":\"1.00\",\"florals\":\"much\"},"
                + "\"levels\":{\"ribbon\":\"dear\"},\"dropped\":[\"roof\"],\"tastes\":[{\"trait\":\"finish\",\"value\":\"dull\"}],\"colour\":1}",
                START.kit().total().currency(), SEASON.catalogue());
        assertThat(((AdjustmentsJson.Reading.Faulty) reading).faults()).extracting(f -> f.field()).containsExactlyInAnyOrder("quantities.a", "products.b",
                "caps.roof", "caps.florals", "levels.ribbon", "dropped", "tastes[0].value", "colour");
    }

    @Test
    void a_map_of_kept_products_is_all_that_a_change_remembers() {
        assertThat(KEEPING.kept()).isEqualTo(START.products());
        assertThat(KEEPING.keeping(Map.of())).isEqualTo(Adjustments.NONE);
    }
}
