package boughwright.needs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NeedsTest {

    private static final Reason WHY = new Reason("Clusters", "row 7", "Because.");
    private final Needs needs = new Needs("winter", List.of(need("topper/grouping", Layer.TOPPER, Role.GROUPING, 3), need("topper/height-stem", Layer.TOPPER, Role.HEIGHT_STEM, 3),
            need("florals/spray/1", Layer.FLORALS, Role.SPRAY, 9), need("florals/spray/2", Layer.FLORALS, Role.SPRAY, 4), need("florals/single-flower", Layer.FLORALS, Role.SINGLE_FLOWER, 0)),
            List.of(new HouseRule(new Demand.Shares(0.6, 0.3, 0.1), WHY), new HouseRule(new Demand.Narrower(Role.OVERLAY_RIBBON, Role.BASE_RIBBON), WHY)),
            new RibbonMeasures(0.2, 0.6, 0.3, 0.3, 4, 4), List.of(), Map.of());

    @Test
    void what_is_made_of_other_pieces_and_what_is_none_is_not_bought() {
        assertThat(needs.bought()).extracting(Need::id).containsExactly("topper/height-stem", "florals/spray/1", "florals/spray/2");
    }

    @Test
    void styles_of_a_role_add_up_within_their_layer() {
        assertThat(needs.quantity(Layer.FLORALS, Role.SPRAY)).isEqualTo(13);
        assertThat(needs.quantity(Layer.TOPPER, Role.SPRAY)).isZero();
    }

    @Test
    void a_need_is_found_by_its_id_and_demands_by_their_kind() {
        assertThat(needs.need("florals/spray/2")).hasValueSatisfying(need -> assertThat(need.quantity()).isEqualTo(4));
        assertThat(needs.need("florals/spray/3")).isEmpty();
        assertThat(needs.demands(Demand.Shares.class)).hasSize(1);
        assertThat(needs.demands(Demand.class)).hasSize(2);
    }

    @Test
    void a_need_is_changed_when_it_differs_from_what_was_computed() {
        assertThat(need("a", Layer.TOPPER, Role.GROUPING, 3).changed()).isFalse();
        assertThat(new Need("a", "a", Layer.TOPPER, Role.GROUPING, 1, 2, 3, Unit.GROUPING, Optional.empty(), WHY).changed()).isTrue();
    }

    @Test
    void a_need_below_nothing_is_a_defect() {
        assertThatThrownBy(() -> need("a", Layer.TOPPER, Role.GROUPING, -1)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("a -1");
    }

    @Test
    void roles_know_what_they_are() {
        assertThat(Role.values()).filteredOn(role -> !role.bought()).containsExactly(Role.GROUPING, Role.CLUSTER, Role.GAP_ACCENT);
        assertThat(Role.values()).filteredOn(Role::ribbon).containsExactly(Role.BASE_RIBBON, Role.OVERLAY_RIBBON, Role.ACCENT_RIBBON);
        assertThat(Role.values()).filteredOn(Role::flower).allMatch(Role::stem).containsExactly(Role.FACE_FLOWER, Role.SINGLE_FLOWER);
    }

    @Test
    void a_demand_says_the_same_in_whatever_order_its_words_were_given() {
        assertThat(new Demand.Never(java.util.Set.of(Role.SPRAY, Role.CLUSTER), Trait.SAFETY, java.util.Set.of("tinsel", "fragile", "sharp")).toString())
                .contains("[CLUSTER, SPRAY]").contains("[fragile, sharp, tinsel]");
    }

    private static Need need(String id, Layer layer, Role role, int quantity) {
        return new Need(id, id, layer, role, 1, quantity, quantity, Unit.STEM, Optional.empty(), WHY);
    }
}
