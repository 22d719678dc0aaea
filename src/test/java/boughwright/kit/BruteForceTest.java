package boughwright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.catalogue.Product;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Safety;
import boughwright.catalogue.Traits.Texture;
import boughwright.needs.Demand;
import boughwright.needs.Dimension;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.needs.Trait;
import boughwright.proposal.ProposalFixture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** On shops so small that every kit can be tried, the solver's is the best and its bound is true. */
class BruteForceTest {

    private static final int SHOPS = 400;
    private static final Role[] ROLES = {Role.HEIGHT_STEM, Role.TEXTURE_STEM, Role.FACE_FLOWER, Role.SPRAY, Role.BASE_RIBBON, Role.OVERLAY_RIBBON};

    /** What trying every kit found. */
    private record Tried(double bestScore, long leastCoins) {
    }

    @Test
    void the_solver_finds_the_best_kit_and_none_where_there_is_none() {
        int none = 0;
        for (int seed = 1; seed <= SHOPS; seed++) {
            TinyShop shop = shop(seed);
            Optional<Tried> tried = tryAll(shop);
            Optional<Kit> kit = ProposalFixture.best(shop.request());
            assertThat(kit.isPresent()).as("a kit for shop %s", seed).isEqualTo(tried.isPresent());
            if (kit.isEmpty()) {
                none++;
                continue;
            }
            double best = tried.get().bestScore();
            assertThat(kit.get().score()).as("score in shop %s", seed).isCloseTo(best, within(1e-5));
            assertThat(kit.get().gap()).as("gap in shop %s", seed).isZero();
            assertThat(kit.get().bound()).as("bound in shop %s", seed).isGreaterThanOrEqualTo(best - 1e-6);
            assertThat(new KitAudit(shop.request(), kit.get().lines()).faults()).as("shop %s", seed).isEmpty();
        }
        assertThat(none).as("shops without a kit, so that both kinds are tried").isBetween(20, SHOPS - 100);
    }

    @Test
    void the_least_that_a_kit_costs_is_the_cheapest_of_all_kits() {
        for (int seed = 1; seed <= SHOPS; seed++) {
            TinyShop shop = shop(seed);
            Optional<Long> least = tryAll(shop).map(Tried::leastCoins);
            assertThat(ProposalFixture.least(shop.request()).map(m -> m.coins())).as("shop %s", seed).isEqualTo(least);
        }
    }

    private static Optional<Tried> tryAll(TinyShop shop) {
        List<Slot> slots = Slot.of(shop.needs().bought());
        List<List<Candidate>> kits = new ArrayList<>(List.of(List.of()));
        for (Slot slot : slots) {
            List<List<Candidate>> longer = new ArrayList<>();
            for (List<Candidate> kit : kits) {
                for (Product product : shop.products) {
                    if (product.roles().contains(slot.role())) {
                        List<Candidate> more = new ArrayList<>(kit);
                        more.add(Candidate.of(slot, product, had(shop, product)));
                        longer.add(more);
                    }
                }
            }
            kits = longer;
        }
        List<List<Candidate>> fitting = kits.stream().filter(k -> fits(shop, k)).toList();
        if (fitting.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Tried(
                fitting.stream().mapToDouble(k -> audit(shop, k).score()).max().orElseThrow(),
                fitting.stream().mapToLong(k -> k.stream().mapToLong(Candidate::coins).sum()).min().orElseThrow()));
    }

    private static int had(TinyShop shop, Product product) {
        return shop.owned.stream().filter(o -> o.sku().equals(product.sku())).mapToInt(o -> o.quantity()).sum();
    }

    private static KitAudit audit(TinyShop shop, List<Candidate> kit) {
        return new KitAudit(shop.request(), KitSolver.lines(shop.needs(), kit));
    }

    private static boolean fits(TinyShop shop, List<Candidate> kit) {
        return audit(shop, kit).faults().isEmpty();
    }

    /** Three slots and up to five products for each, with demands, stock, owned pieces and a budget as the seed has it. */
    private static TinyShop shop(int seed) {
        var random = new SplittableRandom(seed);
        TinyShop shop = new TinyShop();
        List<Role> roles = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            Role role = ROLES[random.nextInt(ROLES.length)];
            roles.add(role);
            shop.need("need/" + i, role.ribbon() ? Layer.RIBBON : Layer.FLORALS, role, 1 + random.nextInt(9));
        }
        int sku = 1;
        for (Role role : Set.copyOf(roles).stream().sorted().toList()) {
            for (int i = 0, count = 2 + random.nextInt(4); i < count; i++) {
                Role second = roles.get(random.nextInt(3));
                shop.sell((second == role || random.nextInt(3) > 0 ? Goods.of("P" + sku++, role) : Goods.of("P" + sku++, role, second))
                        .colour(pick(random, TinyShop.MAIN, TinyShop.SECOND, TinyShop.SPARK, TinyShop.GROUND, "#c43a2e", "#8899aa"))
                        .texture(Texture.values()[random.nextInt(4)]).finish(Finish.values()[random.nextInt(4)])
                        .width(40 + random.nextInt(140)).pack(1 + random.nextInt(6), 1 + random.nextInt(12) + ".49")
                        .stock(random.nextInt(5) == 0 ? random.nextInt(4) : 50).looks(random.nextBoolean() ? "hearth" : "other")
                        .safety(random.nextInt(4) == 0 ? new Safety[] {Safety.FRAGILE} : new Safety[0]));
            }
        }
        demands(shop, random, roles);
        if (random.nextInt(3) == 0) {
            shop.has(shop.products.get(random.nextInt(shop.products.size())).sku(), 1 + random.nextInt(8));
        }
        if (random.nextBoolean()) {
            shop.budget(20 + random.nextInt(150) + ".50");
        }
        return shop;
    }

    private static void demands(TinyShop shop, SplittableRandom random, List<Role> roles) {
        Role one = roles.get(0);
        Role other = roles.get(1);
        shop.demand(new Demand.PaletteParts(one, 1.0, random.nextDouble(), random.nextDouble(), random.nextDouble()),
                new Demand.Shares(0.6, 0.3, 0.1), new Demand.Prefer(other, Trait.TEXTURE, Texture.values()[random.nextInt(4)].word(), 0.5));
        Demand[] hard = {new Demand.Variety(Set.copyOf(roles), Trait.TEXTURE, 2 + random.nextInt(2)), new Demand.Differ(one, other, Trait.FINISH),
                new Demand.DarkOne(Set.copyOf(List.of(one, other)), 42), new Demand.Narrower(one, roles.get(2)),
                new Demand.Never(Set.of(one), Trait.SAFETY, Set.of("fragile")), new Demand.Only(other, Trait.FINISH, Set.of("matte", "satin",
                        "shiny")),
                new Demand.Within(one, Dimension.WIDTH, 0.05, 0.16)};
        for (Demand demand : hard) {
            if (random.nextInt(3) == 0 && !(demand instanceof Demand.Narrower n && n.narrower() == n.wider())) {
                shop.demand(demand);
            }
        }
    }

    private static String pick(SplittableRandom random, String... words) {
        return words[random.nextInt(words.length)];
    }
}
