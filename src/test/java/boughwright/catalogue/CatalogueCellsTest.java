package boughwright.catalogue;

import static boughwright.catalogue.CatalogueFixture.ball;
import static boughwright.catalogue.CatalogueFixture.faults;
import static boughwright.catalogue.CatalogueFixture.file;
import static boughwright.catalogue.CatalogueFixture.lights;
import static boughwright.catalogue.CatalogueFixture.products;
import static boughwright.catalogue.CatalogueFixture.ribbon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.groups.Tuple.tuple;

import boughwright.needs.Role;
import boughwright.needs.Trait;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatalogueCellsTest {

    @Test
    void a_ball_is_read_as_it_is_written() {
        Product ball = products(file(ball("safety", "fragile small-parts"))).get(0);
        assertThat(ball.roles()).containsExactly(Role.FILLER_BALL);
        assertThat(ball.width().metres()).isCloseTo(0.06, within(1e-12));
        assertThat(ball.length().metres()).isZero();
        assertThat(ball.price().show()).isEqualTo("$17.75");
        assertThat(ball.piecesInStock()).isEqualTo(54 * 12);
        assertThat(ball.values(Trait.SAFETY)).isEqualTo(Set.of("fragile", "small-parts"));
        assertThat(ball.values(Trait.TEXTURE)).isEqualTo(Set.of("smooth"));
        assertThat(ball.values(Trait.PATTERN)).isEmpty();
        assertThat(ball.secondColour()).isEmpty();
    }

    @Test
    void a_ribbon_has_a_pattern_and_a_weave_and_lights_have_their_figures() {
        Product ribbon = products(file(ribbon())).get(0);
        assertThat(ribbon.roles()).containsExactlyInAnyOrder(Role.OVERLAY_RIBBON, Role.ACCENT_RIBBON);
        assertThat(ribbon.values(Trait.PATTERN)).isEqualTo(Set.of("stripe"));
        assertThat(ribbon.values(Trait.WEAVE)).isEqualTo(Set.of("close"));
        // A ten-yard roll, as florists' suppliers sell it (TMI Gifts): 9.144 m.
        assertThat(ribbon.length().feet()).isCloseTo(30, within(1e-9));
        assertThat(products(file(lights())).get(0).lights()).contains(new Product.Lights(100, 5, 40));
    }

    @ParameterizedTest
    @CsvSource({"sku, ''", "name, '  '", "shelf, ''", "roles, ''", "roles, cluster", "roles, filler-ball garland", "colour, red", "second_colour, #12",
        "gtin, 6291041500214", "gtin, 629104150021", "texture, Smooth", "finish, ''", "material, gold", "shape, cube", "width_mm, 0", "width_mm, -6",
        "width_mm, 60 mm", "width_mm, 1e2", "width_mm, 2001", "pack, 0", "pack, 1.5", "pack, 1001", "price, 0", "price, 0.00", "price, $5", "price, 5.005",
        "currency, usd", "currency, EUR", "level, cheap", "stock, -1", "stock, ''", "stock, 1000001", "looks, moon-garden", "safety, sharpish"})
    void a_cell_at_fault_is_told_with_line_column_and_value(String column, String value) {
        assertThat(faults(file(ribbon(), ball(column, value)))).extracting(CatalogueFault::line, CatalogueFault::column, CatalogueFault::value)
                .containsExactly(tuple(3, column, value.strip()));
    }

    @ParameterizedTest
    @CsvSource({"pattern, ''", "pattern, zigzag", "weave, ''", "weave, loose", "length_mm, ''", "length_mm, 0"})
    void a_ribbon_needs_its_pattern_weave_and_length(String column, String value) {
        assertThat(faults(file(ribbon(column, value)))).extracting(CatalogueFault::column).containsExactly(column);
    }

    @ParameterizedTest
    @CsvSource({"bulbs, ''", "bulbs, 0", "watts, ''", "watts, 0", "max_run, ''", "max_run, -1", "length_mm, ''"})
    void a_string_of_lights_needs_its_figures(String column, String value) {
        assertThat(faults(file(lights(column, value)))).extracting(CatalogueFault::column).containsExactly(column);
    }

    @Test
    void several_faults_of_one_row_are_all_told() {
        assertThat(faults(file(ball("family", "slver", "price", "free", "stock", "many")))).extracting(CatalogueFault::column)
                .containsExactlyInAnyOrder("family", "price", "stock");
    }

    @Test
    void a_sku_or_gtin_used_twice_is_told_with_the_line_of_its_first_use() {
        assertThat(faults(file(ball(), ribbon("sku", "BL-1")))).singleElement().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(3);
            assertThat(fault.column()).isEqualTo("sku");
            assertThat(fault.mend()).contains("line 2");
        });
        assertThat(faults(file(ball(), ribbon("gtin", "6291041500213", "sku", "BL-1")))).extracting(CatalogueFault::column).containsExactlyInAnyOrder("sku", "gtin");
    }

    @Test
    void a_catalogue_finds_by_sku_and_by_role_and_refuses_twins() {
        List<Product> products = products(file(ribbon(), ball()));
        Catalogue catalogue = new Catalogue(products);
        assertThat(catalogue.product("BL-1")).hasValueSatisfying(product -> assertThat(product.name()).isEqualTo("Silver bauble"));
        assertThat(catalogue.product("XX-1")).isEmpty();
        assertThat(catalogue.inRole(Role.ACCENT_RIBBON)).extracting(Product::sku).containsExactly("RO-1");
        Product twin = products.get(0);
        assertThatThrownBy(() -> new Catalogue(List.of(twin, twin))).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(twin.sku());
    }
}
