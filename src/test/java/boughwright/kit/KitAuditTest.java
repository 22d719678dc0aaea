package boughwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.Traits.Finish;
import boughwright.measure.Money;
import boughwright.needs.Demand;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.needs.Taste;
import boughwright.needs.Trait;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The audit must see whatever a broken programme could let through; each fault is made by hand here. */
class KitAuditTest {

    private static TinyShop shop() {
        return new TinyShop().need("stem", Layer.TOPPER, Role.HEIGHT_STEM, 4).need("flower", Layer.FLORALS, Role.FACE_FLOWER, 4)
                .sell(Goods.of("stem", Role.HEIGHT_STEM).pack(3, "2.00"), Goods.of("flower", Role.FACE_FLOWER).finish(Finish.GLITTER),
                        Goods.of("other", Role.FACE_FLOWER, Role.HEIGHT_STEM).stock(3));
    }

    private static List<KitLine> lines(TinyShop shop, String... skus) {
        KitRequest request = shop.request();
        List<Slot> slots = Slot.of(request.needs().bought());
        List<Candidate> chosen = new ArrayList<>();
        for (int i = 0; i < skus.length; i++) {
            String sku = skus[i];
            int had = shop.owned.stream().filter(o -> o.sku().equals(sku)).mapToInt(o -> o.quantity()).sum();
            chosen.add(Candidate.of(slots.get(i), request.catalogue().product(sku).orElseThrow(), had));
        }
        return KitSolver.lines(request.needs(), chosen);
    }

    private static List<KitAudit.Kind> faults(TinyShop shop, List<KitLine> lines) {
        return new KitAudit(shop.request(), lines).faults().stream().map(KitAudit.Fault::kind).distinct().toList();
    }

    private static KitLine with(KitLine l, int quantity, int owned, int packs, Money price) {
        return new KitLine(l.needId(), l.slot(), l.sku(), l.name(), l.layer(), l.role(), quantity, owned, packs, l.packSize(), l.unitPrice(), price,
                l.shelf(), l.reason());
    }

    @Test
    void a_sound_kit_has_no_fault() {
        assertThat(faults(shop(), lines(shop(), "stem", "flower"))).isEmpty();
    }

    @Test
    void a_need_without_its_line_is_seen() {
        assertThat(faults(shop(), lines(shop(), "stem", "flower").subList(0, 1))).contains(KitAudit.Kind.LINES);
    }

    @Test
    void one_product_in_two_slots_is_seen() {
        assertThat(faults(shop(), lines(shop(), "other", "other"))).contains(KitAudit.Kind.LINES);
    }

    @Test
    void a_pack_too_many_a_piece_too_few_and_a_wrong_price_are_seen() {
        List<KitLine> sound = lines(shop(), "stem", "flower");
        KitLine stem = sound.get(0);
        Money price = stem.price();
        assertThat(faults(shop(), List.of(with(stem, 4, 0, 3, stem.unitPrice().times(3)), sound.get(1)))).containsExactly(KitAudit.Kind.LINES);
        assertThat(faults(shop(), List.of(with(stem, 3, 0, 1, stem.unitPrice()), sound.get(1)))).containsExactly(KitAudit.Kind.LINES);
        assertThat(faults(shop(), List.of(with(stem, 4, 0, 2, price.plus(Money.ofCoins(1, price.currency()))), sound.get(1))))
                .containsExactly(KitAudit.Kind.LINES);
        assertThat(faults(shop(), List.of(with(stem, 4, 1, 1, stem.unitPrice()), sound.get(1)))).as("an owned piece that nobody has")
                .containsExactly(KitAudit.Kind.LINES);
    }

    @Test
    void more_than_the_shelf_holds_is_seen() {
        assertThat(faults(shop(), lines(shop(), "stem", "other"))).containsExactly(KitAudit.Kind.STOCK);
    }

    @Test
    void a_cent_over_the_budget_is_seen() {
        // Two packs of stems at two dollars and four flowers at one.
        assertThat(faults(shop().budget("8.00"), lines(shop(), "stem", "flower"))).isEmpty();
        assertThat(faults(shop().budget("7.99"), lines(shop(), "stem", "flower"))).containsExactly(KitAudit.Kind.BUDGET);
    }

    @Test
    void a_layer_over_its_cap_is_seen() {
        TinyShop shop = shop();
        shop.hand = shop.hand.withCap(Layer.FLORALS, Money.read("3.99", TinyShop.DOLLARS).orElseThrow());
        assertThat(faults(shop, lines(shop, "stem", "flower"))).containsExactly(KitAudit.Kind.CAP);
        shop.hand = shop.hand.withCap(Layer.FLORALS, Money.read("4.00", TinyShop.DOLLARS).orElseThrow());
        assertThat(faults(shop, lines(shop, "stem", "flower"))).isEmpty();
    }

    @Test
    void a_broken_wish_and_a_broken_rule_are_told_by_name() {
        TinyShop shop = shop().demand(new Demand.Never(Set.of(Role.FACE_FLOWER), Trait.FINISH, Set.of("glitter")));
        shop.hand = shop.hand.withTaste(Taste.no(Trait.FINISH, "glitter")).withProduct("stem", "other");
        assertThat(new KitAudit(shop.request(), lines(shop, "stem", "flower")).faults()).containsExactlyInAnyOrder(
                new KitAudit.Fault(KitAudit.Kind.WISH, "product:stem"), new KitAudit.Fault(KitAudit.Kind.WISH, "taste:no:finish:glitter"),
                new KitAudit.Fault(KitAudit.Kind.HOUSE, "So that a test may ask for it."));
    }
}
