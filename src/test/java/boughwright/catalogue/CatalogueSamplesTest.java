package boughwright.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.needs.Role;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CatalogueSamplesTest {

    private final List<Product> season = CatalogueFixture.products(CatalogueFixture.sample("season.csv"));
    private final List<Product> small = CatalogueFixture.products(CatalogueFixture.sample("small.csv"));

    @Test
    void the_season_s_catalogue_is_read_whole_and_is_broad() {
        assertThat(season).hasSizeGreaterThanOrEqualTo(300);
        assertThat(season.stream().map(Product::family).distinct().count()).isGreaterThanOrEqualTo(8);
        assertThat(season.stream().map(Product::texture).distinct().count()).isGreaterThanOrEqualTo(8);
        assertThat(season.stream().map(Product::finish).distinct().count()).isGreaterThanOrEqualTo(5);
        assertThat(season.stream().map(Product::level).distinct()).containsExactlyInAnyOrder(Traits.Level.values());
    }

    @Test
    void the_small_catalogue_is_read_whole() {
        assertThat(small).hasSize(60);
    }

    @Test
    void both_sell_something_for_every_role_that_is_bought() {
        for (List<Product> products : List.of(season, small)) {
            Catalogue catalogue = new Catalogue(products);
            assertThat(Arrays.stream(Role.values()).filter(Role::bought)).allSatisfy(role -> assertThat(catalogue.inRole(role)).as(role.word()).isNotEmpty());
        }
    }

    /** UL 588 as told by christmaslightsetc.com: at most 210 W end to end on 22 AWG wire. */
    @Test
    void every_string_of_lights_keeps_its_printed_run_within_210_watts() {
        assertThat(season).filteredOn(product -> product.lights().isPresent()).isNotEmpty()
                .allSatisfy(product -> assertThat(product.lights().get().watts() * product.lights().get().runLimit()).as(product.sku()).isLessThanOrEqualTo(210 + 1e-9));
    }

    /** By hand: floor(210 W / 40.8 W) = 5; 40.8 W for 100 incandescent bulbs is in pfeiffertheface.com's table. */
    @Test
    void a_string_of_a_hundred_incandescent_bulbs_runs_five_end_to_end() {
        assertThat(season).filteredOn(product -> product.lights().filter(lights -> lights.watts() == 40.8).isPresent()).isNotEmpty()
                .allSatisfy(product -> assertThat(product.lights().orElseThrow().runLimit()).isEqualTo(5));
    }

    @Test
    void a_catalogue_lists_its_products_by_sku_whatever_the_order_of_the_file() {
        assertThat(season).extracting(Product::sku).isSorted();
    }

    @ParameterizedTest
    @ValueSource(strings = {"season.csv", "small.csv"})
    void the_samples_are_read_alike_with_either_line_ending(String name) {
        String unix = CatalogueFixture.sample(name).replace("\r\n", "\n");
        assertThat(CatalogueFixture.products(unix.replace("\n", "\r\n"))).isEqualTo(CatalogueFixture.products(unix));
    }
}
