package boughwright.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.catalogue.ShelfMatch.Nearness;
import boughwright.colour.Lab;
import boughwright.colour.Srgb;
import boughwright.needs.Role;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShelfMatchTest {

    private final Catalogue catalogue = KioskFixture.designer().catalogue();

    @Test
    void the_nearest_ribbon_floral_and_ornament_come_nearest_first() {
        Srgb wine = new Srgb(0x8f, 0x2f, 0x4c);
        List<ShelfMatch> found = ShelfMatch.nearest(catalogue, wine);
        assertThat(found).hasSize(3).isSortedAccordingTo(Comparator.comparingDouble(ShelfMatch::difference));
        assertThat(found).extracting(m -> m.product().roles().stream().anyMatch(Role::ribbon)).containsOnlyOnce(true);
        assertThat(found).extracting(m -> m.product().roles().stream().anyMatch(Role::stem)).containsOnlyOnce(true);
        double least = catalogue.products().stream().filter(p -> p.stock() > 0 && !p.roles().contains(Role.LIGHT_STRING))
                .mapToDouble(p -> p.lab().difference(Lab.of(wine))).min().orElseThrow();
        assertThat(found.get(0).difference()).isEqualTo(least);
    }

    @Test
    void what_is_out_of_stock_and_lights_are_passed_by() {
        for (Product product : catalogue.products()) {
            List<ShelfMatch> found = ShelfMatch.nearest(catalogue, product.colour());
            assertThat(found).extracting(m -> m.product().stock()).allSatisfy(stock -> assertThat(stock).isPositive());
            assertThat(found).noneMatch(m -> m.product().roles().contains(Role.LIGHT_STRING));
        }
        assertThat(ShelfMatch.nearest(new Catalogue(List.of()), new Srgb(1, 2, 3))).isEmpty();
    }

    @Test
    void a_difference_is_told_in_words() {
        Product product = catalogue.products().get(0);
        assertThat(new ShelfMatch(product, 0).nearness()).isEqualTo(Nearness.SAME);
        assertThat(new ShelfMatch(product, 3).nearness()).isEqualTo(Nearness.SAME);
        assertThat(new ShelfMatch(product, 3.1).nearness()).isEqualTo(Nearness.NEAR);
        assertThat(new ShelfMatch(product, 8.1).nearness()).isEqualTo(Nearness.FAR);
    }
}
