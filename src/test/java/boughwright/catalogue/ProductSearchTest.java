package boughwright.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.catalogue.ProductSearch.Found;
import boughwright.catalogue.ProductSearch.Stock;
import boughwright.catalogue.Traits.Family;
import boughwright.catalogue.Traits.Level;
import boughwright.colour.Srgb;
import boughwright.needs.Role;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ProductSearchTest {

    private static final List<Product> SEASON = KioskFixture.designer().catalogue().products();

    private static List<Product> found(ProductSearch search) {
        return search.in(SEASON).stream().map(Found::product).toList();
    }

    @Test
    void nothing_asked_finds_everything_in_the_order_of_skus_whatever_order_it_is_in() {
        List<Product> shuffled = new ArrayList<>(SEASON);
        Collections.shuffle(shuffled, new Random(1));

        assertThat(ProductSearch.ALL.in(shuffled).stream().map(Found::product).toList()).isEqualTo(SEASON);
    }

    @Test
    void all_words_of_a_text_must_occur_in_name_number_or_shelf_in_any_case() {
        Product one = SEASON.get(0);
        String word = one.name().split("[ ,]")[0].toUpperCase();

        assertThat(found(ProductSearch.ALL.withText(word + "  " + one.sku().toLowerCase()))).containsExactly(one);
        assertThat(found(ProductSearch.ALL.withText(one.gtin()))).containsExactly(one);
        assertThat(found(ProductSearch.ALL.withText(one.sku() + " nosuchword"))).isEmpty();
    }

    @Test
    void filters_narrow_each_other() {
        ProductSearch search = ProductSearch.ALL.withRole(Optional.of(Role.FILLER_BALL)).withFamily(Optional.of(Family.RED)).withLevel(Optional.of(Level.FINE));

        assertThat(found(search)).isNotEmpty().allSatisfy(p -> {
            assertThat(p.roles()).contains(Role.FILLER_BALL);
            assertThat(p.family()).isEqualTo(Family.RED);
            assertThat(p.level()).isEqualTo(Level.FINE);
        });
        assertThat(found(search).size()).isEqualTo((int) SEASON.stream().filter(p -> p.roles().contains(Role.FILLER_BALL) && p.family() == Family.RED
                && p.level() == Level.FINE).count());
    }

    @Test
    void low_stock_is_some_but_few() {
        assertThat(found(ProductSearch.ALL.withStock(Stock.LOW))).isNotEmpty().allSatisfy(p -> assertThat(p.stock()).isBetween(1, ProductSearch.LOW));
        assertThat(found(ProductSearch.ALL.withStock(Stock.NONE))).isNotEmpty().allSatisfy(p -> assertThat(p.stock()).isZero());
    }

    @Test
    void ribbons_near_a_colour_come_nearest_first_and_the_very_colour_is_no_distance_away() {
        Product ribbon = SEASON.stream().filter(p -> p.roles().contains(Role.OVERLAY_RIBBON)).findFirst().orElseThrow();
        List<Found> found = ProductSearch.ALL.withRole(Optional.of(Role.OVERLAY_RIBBON)).withNear(Optional.of(ribbon.colour())).in(SEASON);

        assertThat(found.get(0).distance()).isZero();
        assertThat(found).isSortedAccordingTo((a, b) -> Double.compare(a.distance(), b.distance()));
        assertThat(found.get(found.size() - 1).distance()).isGreaterThan(20);
    }

    @Test
    void a_second_colour_counts_as_much_as_the_first() {
        Product two = SEASON.stream().filter(p -> p.secondColour().isPresent()).findFirst().orElseThrow();

        assertThat(ProductSearch.ALL.withNear(two.secondColour()).in(List.of(two)).get(0).distance()).isZero();
        assertThat(ProductSearch.ALL.withNear(Optional.of(new Srgb(0, 0, 255))).in(List.of(two)).get(0).distance()).isPositive();
    }

    @Test
    void orders_hold_and_the_sku_decides_between_equals() {
        List<Product> cheapest = found(ProductSearch.ALL.withOrder(ProductSearch.Order.CHEAPEST));

        for (int i = 1; i < cheapest.size(); i++) {
            int by = cheapest.get(i - 1).price().amount().compareTo(cheapest.get(i).price().amount());
            assertThat(by < 0 || by == 0 && cheapest.get(i - 1).sku().compareTo(cheapest.get(i).sku()) < 0).isTrue();
        }
    }
}
