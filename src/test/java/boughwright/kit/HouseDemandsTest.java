package boughwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Safety;
import boughwright.catalogue.Traits.Texture;
import boughwright.needs.Demand;
import boughwright.needs.Dimension;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.needs.Trait;
import boughwright.proposal.ProposalFixture;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each hard demand against a product that would win without it. */
class HouseDemandsTest {

    /** One flower and one stem; the products whose name begins with "best" are made for the look. */
    private static TinyShop shop() {
        return new TinyShop().need("stem", Layer.FLORALS, Role.HEIGHT_STEM, 1).need("flower", Layer.FLORALS, Role.FACE_FLOWER, 1);
    }

    private static Goods stem(String sku) {
        return Goods.of(sku, Role.HEIGHT_STEM).looks(sku.startsWith("best") ? "hearth" : "other");
    }

    private static Goods flower(String sku) {
        return Goods.of(sku, Role.FACE_FLOWER).looks(sku.startsWith("best") ? "hearth" : "other");
    }

    private static List<String> chosen(TinyShop shop) {
        Optional<Kit> kit = ProposalFixture.best(shop.request());
        return kit.map(k -> k.lines().stream().map(KitLine::sku).toList()).orElse(List.of());
    }

    @Test
    void without_demands_the_best_two_are_chosen() {
        assertThat(chosen(shop().sell(stem("best-stem"), stem("stem"), flower("best-flower"), flower("flower"))))
                .containsExactly("best-stem", "best-flower");
    }

    @Test
    void only_some_finishes_may_come_into_a_role() {
        TinyShop shop = shop().sell(stem("best-stem"), flower("best-flower").finish(Finish.GLITTER), flower("flower").finish(Finish.MATTE));
        assertThat(chosen(shop.demand(new Demand.Only(Role.FACE_FLOWER, Trait.FINISH, Set.of("matte"))))).containsExactly("best-stem", "flower");
    }

    @Test
    void what_is_never_wanted_in_any_role_is_left_out_of_all() {
        TinyShop shop = shop().sell(stem("best-stem").safety(Safety.SHARP), stem("stem"), flower("best-flower").safety(Safety.FRAGILE, Safety.SHARP),
                flower("flower"));
        assertThat(chosen(shop.demand(new Demand.Never(Set.of(), Trait.SAFETY, Set.of("sharp"))))).containsExactly("stem", "flower");
    }

    @Test
    void what_is_never_wanted_in_one_role_may_come_into_another() {
        TinyShop shop = shop().sell(stem("best-stem").safety(Safety.SHARP), stem("stem"), flower("best-flower").safety(Safety.SHARP),
                flower("flower"));
        assertThat(chosen(shop.demand(new Demand.Never(Set.of(Role.HEIGHT_STEM), Trait.SAFETY, Set.of("sharp")))))
                .containsExactly("stem", "best-flower");
    }

    @Test
    void a_measure_keeps_within_its_limits_and_the_limits_belong_to_it() {
        TinyShop shop = shop().sell(stem("best-stem").length(701), stem("stem").length(700), flower("best-flower"));
        assertThat(chosen(shop.demand(new Demand.Within(Role.HEIGHT_STEM, Dimension.LENGTH, 0.3, 0.7)))).containsExactly("stem", "best-flower");
    }

    @Test
    void the_roles_show_as_many_textures_as_asked() {
        TinyShop shop = shop().sell(stem("best-stem").texture(Texture.LEAFY), flower("best-flower").texture(Texture.LEAFY), flower("flower")
                .texture(Texture.FUR));
        assertThat(chosen(shop.demand(new Demand.Variety(Set.of(Role.HEIGHT_STEM, Role.FACE_FLOWER), Trait.TEXTURE, 2))))
                .containsExactly("best-stem", "flower");
    }

    @Test
    void two_roles_that_must_differ_share_no_texture() {
        TinyShop shop = shop().sell(stem("best-stem").texture(Texture.LEAFY), flower("best-flower").texture(Texture.LEAFY), flower("flower")
                .texture(Texture.FUR));
        assertThat(chosen(shop.demand(new Demand.Differ(Role.HEIGHT_STEM, Role.FACE_FLOWER, Trait.TEXTURE)))).containsExactly("best-stem", "flower");
    }

    @Test
    void products_without_any_value_of_a_trait_share_none() {
        TinyShop shop = shop().sell(stem("best-stem"), flower("best-flower"));
        assertThat(chosen(shop.demand(new Demand.Differ(Role.HEIGHT_STEM, Role.FACE_FLOWER, Trait.SAFETY)))).containsExactly("best-stem",
                "best-flower");
    }

    @Test
    void products_with_several_values_of_a_trait_differ_only_when_they_share_none() {
        TinyShop shop = shop().sell(stem("best-stem").safety(Safety.SHARP, Safety.FRAGILE), flower("best-flower").safety(Safety.SHARP),
                flower("flower").safety(Safety.TINSEL));
        assertThat(chosen(shop.demand(new Demand.Differ(Role.HEIGHT_STEM, Role.FACE_FLOWER, Trait.SAFETY)))).containsExactly("best-stem", "flower");
    }

    @Test
    void one_of_the_flowers_is_dark() {
        TinyShop shop = shop().sell(stem("best-stem").colour("#ffffff"), flower("best-flower").colour("#ffffff"), flower("flower").colour("#000000"));
        assertThat(chosen(shop.demand(new Demand.DarkOne(Set.of(Role.FACE_FLOWER), 42)))).containsExactly("best-stem", "flower");
    }

    @Test
    void the_overlay_is_narrower_than_the_base() {
        TinyShop shop = new TinyShop().need("base", Layer.RIBBON, Role.BASE_RIBBON, 2).need("overlay", Layer.RIBBON, Role.OVERLAY_RIBBON, 2)
                .sell(Goods.of("base", Role.BASE_RIBBON).width(64), Goods.of("best-overlay", Role.OVERLAY_RIBBON).looks("hearth").width(64),
                        Goods.of("overlay", Role.OVERLAY_RIBBON).width(63.5))
                .demand(new Demand.Narrower(Role.OVERLAY_RIBBON, Role.BASE_RIBBON));
        assertThat(chosen(shop)).containsExactly("base", "overlay");
    }

    @Test
    void a_product_that_could_fill_two_slots_fills_one() {
        TinyShop shop = shop().sell(Goods.of("best-both", Role.HEIGHT_STEM, Role.FACE_FLOWER).looks("hearth"), stem("stem"), flower("flower"));
        assertThat(Set.copyOf(chosen(shop))).hasSize(2);
    }

    @Test
    void a_demand_that_nothing_meets_leaves_no_kit() {
        TinyShop shop = shop().sell(stem("stem").texture(Texture.FUR), flower("flower").texture(Texture.FUR));
        assertThat(chosen(shop.demand(new Demand.Differ(Role.HEIGHT_STEM, Role.FACE_FLOWER, Trait.TEXTURE)))).isEmpty();
    }
}
