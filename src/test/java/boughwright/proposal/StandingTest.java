package boughwright.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.catalogue.Product;
import boughwright.kit.Cause;
import boughwright.kit.KitLine;
import boughwright.needs.Adjustments;
import boughwright.needs.Role;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class StandingTest {

    private static final Designer SHOP = KioskFixture.designer();

    private static Proposal proposal(String brief) {
        return ((Outcome.Made) SHOP.propose(brief, Adjustments.NONE, Designer.SEED)).proposal();
    }

    private static final Proposal WOODLAND = proposal("{\"tree\": {\"height\": \"7 ft 6 in\"}, \"look\": \"woodland\"}");

    private static Standing of(Proposal proposal, Product product) {
        return Standing.of(proposal, product, SHOP);
    }

    private static Product product(Predicate<Product> which) {
        return SHOP.catalogue().products().stream().filter(p -> WOODLAND.kit().lines().stream().noneMatch(l -> l.sku().equals(p.sku()))).filter(which)
                .findFirst().orElseThrow();
    }

    @Test
    void what_stands_in_the_kit_is_proposed() {
        for (KitLine line : WOODLAND.kit().lines()) {
            assertThat(of(WOODLAND, WOODLAND.product(line)).proposed()).as(line.sku()).isTrue();
        }
    }

    @Test
    void what_is_out_of_stock_says_so() {
        Product none = product(p -> p.stock() == 0 && p.roles().contains(Role.OVERLAY_RIBBON) || p.stock() == 0 && p.roles().contains(Role.SPRAY));

        assertThat(of(WOODLAND, none).places()).isNotEmpty().anySatisfy(place -> {
            assertThat(place.cause()).contains(Cause.Kind.STOCK);
            assertThat(place.sentence()).contains("none on hand");
        });
    }

    @Test
    void an_ornament_of_another_size_than_the_place_asks_for_says_so() {
        List<Double> asked = WOODLAND.needs().bought().stream().filter(n -> n.role() == Role.FEATURE_ORNAMENT).map(n -> n.diameter().orElseThrow().metres()).toList();
        Product larger = product(p -> p.roles().contains(Role.FEATURE_ORNAMENT) && p.stock() > 20 && asked.stream().anyMatch(d -> p.length().metres() > 1.6 * d));

        assertThat(of(WOODLAND, larger).places()).anySatisfy(place -> assertThat(place.cause()).contains(Cause.Kind.SIZE));
    }

    @Test
    void a_house_rule_is_told_in_its_own_words() {
        Proposal toddlers = proposal("{\"tree\": {\"height\": \"7 ft 6 in\"}, \"look\": \"frost-fair\", \"household\": {\"toddlers\": true}}");
        Product glass = product(p -> p.roles().equals(java.util.Set.of(Role.FEATURE_ORNAMENT)) && p.values(boughwright.needs.Trait.SAFETY).contains("fragile")
                && p.stock() > 20);

        assertThat(of(toddlers, glass).places()).isNotEmpty().anySatisfy(place -> {
            assertThat(place.cause().filter(c -> c == Cause.Kind.HOUSE || c == Cause.Kind.SIZE)).isPresent();
        });
    }

    @Test
    void what_is_less_apt_says_by_how_much_and_in_what() {
        Optional<String> sentence = SHOP.catalogue().products().stream().filter(p -> p.roles().contains(Role.BASE_RIBBON) && p.stock() > 20)
                .flatMap(p -> of(WOODLAND, p).places().stream()).filter(place -> place.cause().equals(Optional.of(Cause.Kind.BETTER)))
                .map(Standing.Place::sentence).filter(s -> s.contains("better by")).findFirst();

        assertThat(sentence).hasValueSatisfying(s -> assertThat(s).matches(".* is better by \\d+\\.\\d points: .+ −\\d+\\.\\d.*"));
    }

    @Test
    void a_tree_has_no_use_for_what_fills_no_place_on_it() {
        Proposal lit = proposal("{\"tree\": {\"height\": \"7 ft 6 in\", \"lit\": true}}");
        Product lights = product(p -> p.roles().equals(java.util.Set.of(Role.LIGHT_STRING)));

        assertThat(of(lit, lights).places()).isEmpty();
        assertThat(of(lit, lights).nearest()).isEmpty();
    }
}
