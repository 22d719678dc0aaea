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
        assertThat(season).hasSize(600);
        assertThat(season.stream().map(Product::family).distinct().count()).isGreaterThanOrEqualTo(8);
        assertThat(season.stream().map(Product::texture).distinct().count()).isGreaterThanOrEqualTo(8);
        assertThat(season.stream().map(Product::finish).distinct().count()).isGreaterThanOrEqualTo(5);
        assertThat(season.stream().map(Product::level).distinct()).containsExactlyInAnyOrder(Traits.Level.values());
    }

    @Test
    void every_look_finds_something_that_was_bought_for_it_in_every_role_at_every_level() {
        for (String look : CatalogueFixture.LOOKS) {
            for (Traits.Level level : Traits.Level.values()) {
                Catalogue shelf = new Catalogue(season.stream().filter(p -> p.level() == level && p.stock() > 0 && p.looks().contains(look)).toList());
                assertThat(Arrays.stream(Role.values()).filter(Role::bought)).as("%s %s", look, level.word())
                        .allSatisfy(role -> assertThat(shelf.inRole(role)).as(role.word()).isNotEmpty());
            }
        }
    }

    /** A shop that is open sells things out. */
    @Test
    void some_shelves_are_bare_and_most_are_not() {
        assertThat(season).filteredOn(p -> p.stock() == 0).hasSizeBetween(6, 40);
        assertThat(season).filteredOn(p -> p.stock() >= 20).hasSizeGreaterThanOrEqualTo(480);
    }

    @Test
    void no_two_products_bear_the_same_name_or_lie_in_the_same_place() {
        assertThat(season).extracting(Product::name).doesNotHaveDuplicates();
        assertThat(season).extracting(Product::shelf).doesNotHaveDuplicates();
    }

    /** GS1 keeps 20 to 29 for numbers that are good within one shop alone ("GS1 Prefixes", from memory); invented goods need such. */
    @Test
    void the_numbers_of_invented_goods_are_good_in_one_shop_alone() {
        assertThat(season).extracting(Product::gtin).allMatch(gtin -> gtin.startsWith("2")).doesNotHaveDuplicates();
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
