package boughwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.proposal.ProposalFixture;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Packs, owned pieces and prices; every figure is worked out by hand. */
class KitArithmeticTest {

    private static Kit kit(TinyShop shop) {
        return ProposalFixture.best(shop.request()).orElseThrow();
    }

    private static TinyShop sprays(int quantity) {
        return new TinyShop().need("spray", Layer.FLORALS, Role.SPRAY, quantity);
    }

    @Test
    void whole_packs_are_bought_and_paid_for() {
        KitLine line = kit(sprays(10).sell(Goods.of("S", Role.SPRAY).pack(4, "5.25"))).lines().get(0);
        assertThat(line.packs()).isEqualTo(3);
        assertThat(line.price().decimal()).isEqualTo("15.75");
        assertThat(line.unitPrice().decimal()).isEqualTo("5.25");
    }

    @Test
    void a_need_that_fills_its_packs_takes_no_pack_more() {
        assertThat(kit(sprays(12).sell(Goods.of("S", Role.SPRAY).pack(4, "5.25"))).lines().get(0).packs()).isEqualTo(3);
    }

    @Test
    void owned_pieces_come_first_and_reduce_the_packs() {
        KitLine line = kit(sprays(10).sell(Goods.of("S", Role.SPRAY).pack(4, "5.25")).has("S", 5)).lines().get(0);
        assertThat(line.owned()).isEqualTo(5);
        assertThat(line.packs()).isEqualTo(2);
    }

    @Test
    void more_owned_pieces_than_are_needed_cost_nothing() {
        Kit kit = kit(sprays(10).sell(Goods.of("S", Role.SPRAY).pack(4, "5.25")).has("S", 40));
        assertThat(kit.lines().get(0).owned()).isEqualTo(10);
        assertThat(kit.total().decimal()).isEqualTo("0.00");
    }

    @Test
    void owned_pieces_serve_even_when_the_shelf_is_empty() {
        Kit kit = kit(sprays(4).sell(Goods.of("S", Role.SPRAY).stock(0)).has("S", 4));
        assertThat(kit.lines().get(0).packs()).isZero();
    }

    @Test
    void topper_and_clusters_share_the_packs_of_their_stem() {
        TinyShop shop = new TinyShop().need("topper", "stem", Layer.TOPPER, Role.HEIGHT_STEM, 4, Optional.empty())
                .need("cluster", "stem", Layer.FLORALS, Role.HEIGHT_STEM, 7, Optional.empty())
                .sell(Goods.of("S", Role.HEIGHT_STEM).pack(3, "6.00")).has("S", 2);
        Kit kit = kit(shop);
        assertThat(kit.lines()).extracting(KitLine::quantity).containsExactly(4, 7);
        assertThat(kit.lines()).extracting(KitLine::owned).containsExactly(2, 0);
        // Nine to buy in all: one pack covers the topper's two, two more the clusters' seven.
        assertThat(kit.lines()).extracting(KitLine::packs).containsExactly(1, 2);
        assertThat(kit.total().decimal()).isEqualTo("18.00");
    }

    @Test
    void strings_of_lights_cover_the_bulbs() {
        TinyShop shop = new TinyShop().need("lights", Layer.LIGHTS, Role.LIGHT_STRING, 701)
                .sell(Goods.of("L", Role.LIGHT_STRING).bulbs(100).pack(2, "20.00"));
        KitLine line = kit(shop).lines().get(0);
        assertThat(line.quantity()).isEqualTo(8);
        assertThat(line.packs()).isEqualTo(4);
    }

    @Test
    void a_roll_of_twenty_five_yards_counts_as_two_and_a_half() {
        assertThat(rolls(5)).isEqualTo(2);
        assertThat(rolls(3)).isEqualTo(2);
        assertThat(rolls(2)).isEqualTo(1);
    }

    /** Rolls of 25 yd bought for so many rolls of 10 yd. */
    private static int rolls(int needed) {
        TinyShop shop = new TinyShop().need("ribbon", Layer.RIBBON, Role.ACCENT_RIBBON, needed)
                .sell(Goods.of("R", Role.ACCENT_RIBBON).length(22860));
        return kit(shop).lines().get(0).quantity();
    }

    @Test
    void no_more_packs_are_promised_than_are_in_stock() {
        TinyShop shop = sprays(10).sell(Goods.of("A", Role.SPRAY).looks("hearth").pack(4, "1.00").stock(2), Goods.of("B", Role.SPRAY).pack(4,
                "9.00").stock(3));
        assertThat(kit(shop).lines().get(0).sku()).isEqualTo("B");
    }

    @Test
    void a_budget_may_be_spent_to_the_last_cent() {
        TinyShop shop = sprays(3).sell(Goods.of("S", Role.SPRAY).pack(1, "3.33"));
        assertThat(ProposalFixture.best(shop.budget("9.99").request())).isPresent();
        assertThat(ProposalFixture.best(shop.budget("9.98").request())).isEmpty();
    }
}
