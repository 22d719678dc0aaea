package boughwright.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.Abundance;
import boughwright.brief.Look;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.catalogue.Traits.Level;
import boughwright.kit.Kit;
import boughwright.kit.Patience;
import boughwright.kit.Term;
import boughwright.kit.TermScore;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The season's shelf dresses every look at every price level: a shop that sold the products of one level and nothing else could still make the
 * kit, for every usual height and every abundance, in the look's own palette, without a budget.
 */
class EveryLookIsCompleteTest {

    private static final List<String> HEIGHTS = List.of("4", "5", "6", "6.5", "7.5", "9", "10", "12");

    /** Trees that one level cannot dress, by name, with the reason; a tree that is named here and can be dressed is a fault as well. */
    private static final SortedMap<String, String> CANNOT = new TreeMap<>();

    /** At least so much of what the kit's places have to say goes to products made for the look; {@link Term#LOOK_FIT}. */
    private static final double LOOK_FIT = 0.80;
    /** At least so near do the colours come to those of the palette that suit their places; {@link Term#PALETTE_FIT}. */
    private static final double PALETTE_FIT = 0.75;
    /** At least so near to main 60, second 30, spark 10 is what is seen of them; {@link Term#PALETTE_SHARES}. */
    private static final double PALETTE_SHARES = 0.70;
    /** At most so much of what is seen is off its palette colour by so little that it looks like a mistake; {@link Term#NO_NEAR_MISS}. */
    private static final double NEAR_MISS = 0.30;

    private record Tree(Look look, Level level, String height, Abundance abundance, String seenFrom) {

        String name() {
            return look.id() + " " + level.word() + " " + height + " ft " + abundance.word() + " " + seenFrom;
        }

        String brief() {
            return "{\"tree\":{\"height\":\"" + height + " ft\",\"seenFrom\":\"" + seenFrom + "\"},\"look\":\"" + look.id() + "\",\"palette\":\""
                    + look.palette() + "\",\"abundance\":\"" + abundance.word() + "\"}";
        }
    }

    /** All trees against a wall with the kits of their level; made once, on as many threads as there are. */
    private static final class Dressed {
        static final Map<Tree, Optional<Kit>> KITS = dress("wall", HEIGHTS, List.of(Abundance.values()));
    }

    private static Map<Tree, Optional<Kit>> dress(String seenFrom, List<String> heights, List<Abundance> abundances) {
        Map<Level, Designer> shops = new TreeMap<>();
        for (Level level : Level.values()) {
            List<Product> products = ProposalFixture.season().catalogue().products().stream().filter(p -> p.level() == level).toList();
            shops.put(level, ProposalFixture.designer(new Catalogue(products)));
        }
        List<Tree> trees = looks().flatMap(look -> Arrays.stream(Level.values()).flatMap(level -> heights.stream().flatMap(height ->
                abundances.stream().map(abundance -> new Tree(look, level, height, abundance, seenFrom))))).toList();
        List<Optional<Kit>> kits = trees.parallelStream().map(t ->
                shops.get(t.level()).kitIfPossible(ProposalFixture.brief(t.brief()), Adjustments.NONE, Patience.usual())).toList();
        Map<Tree, Optional<Kit>> dressed = new LinkedHashMap<>();
        for (int i = 0; i < trees.size(); i++) {
            dressed.put(trees.get(i), kits.get(i));
        }
        return dressed;
    }

    private static Stream<Look> looks() {
        return ProposalFixture.rulebook().choices().looks().stream();
    }

    @Test
    void eight_looks_of_eight_heights_three_abundances_and_three_levels_each_have_a_kit() {
        assertThat(Dressed.KITS).hasSize(8 * 8 * 3 * 3);
        assertThat(Dressed.KITS.entrySet().stream().filter(e -> e.getValue().isEmpty()).map(e -> e.getKey().name()).sorted().toList())
                .isEqualTo(List.copyOf(CANNOT.keySet()));
    }

    @Test
    void each_of_these_kits_is_worthy_of_its_look_and_shows_its_palette() {
        Dressed.KITS.forEach((tree, made) -> made.ifPresent(kit -> {
            assertThat(value(kit, Term.LOOK_FIT)).as("%s: look fit", tree.name()).isGreaterThanOrEqualTo(LOOK_FIT);
            assertThat(value(kit, Term.PALETTE_FIT)).as("%s: palette fit", tree.name()).isGreaterThanOrEqualTo(PALETTE_FIT);
            assertThat(value(kit, Term.PALETTE_SHARES)).as("%s: palette shares", tree.name()).isGreaterThanOrEqualTo(PALETTE_SHARES);
            assertThat(value(kit, Term.NO_NEAR_MISS)).as("%s: no near miss", tree.name()).isGreaterThanOrEqualTo(1 - NEAR_MISS);
        }));
    }

    @Test
    void in_each_of_these_kits_two_lines_of_three_were_bought_for_the_look() {
        Dressed.KITS.forEach((tree, made) -> made.ifPresent(kit -> {
            List<Product> products = kit.lines().stream().map(l -> ProposalFixture.season().catalogue().product(l.sku()).orElseThrow()).distinct().toList();
            long tagged = products.stream().filter(p -> p.looks().contains(tree.look().id())).count();
            assertThat(3 * tagged).as("%s: %d of %d", tree.name(), tagged, products.size()).isGreaterThanOrEqualTo(2L * products.size());
        }));
    }

    /** No tree of these heights takes more than a lavish one of 12 ft that is seen all round. */
    @Test
    void the_shelves_hold_enough_for_the_largest_of_them_seen_all_round() {
        assertThat(dress("round", List.of("12"), List.of(Abundance.LAVISH))).hasSize(8 * 3)
                .allSatisfy((tree, kit) -> assertThat(kit).as(tree.name()).isPresent());
    }

    /** A level only sways the choice; on this shelf it can be had whole. */
    @Test
    void whoever_asks_the_whole_shop_for_one_level_gets_that_level_alone() {
        looks().forEach(look -> {
            for (Level level : Level.values()) {
                Adjustments asked = Adjustments.NONE;
                for (Layer layer : Layer.values()) {
                    asked = asked.withLevel(layer, level.word());
                }
                Tree tree = new Tree(look, level, "7.5", Abundance.GENEROUS, "wall");
                Kit kit = ProposalFixture.season().kitIfPossible(ProposalFixture.brief(tree.brief()), asked, Patience.usual()).orElseThrow();
                assertThat(kit.lines()).as(tree.name())
                        .allSatisfy(l -> assertThat(ProposalFixture.season().catalogue().product(l.sku()).orElseThrow().level()).as(l.name()).isEqualTo(level));
            }
        });
    }

    @Test
    void a_fine_tree_costs_more_than_an_everyday_one_and_that_more_than_one_of_value() {
        Dressed.KITS.forEach((tree, made) -> {
            if (tree.level() != Level.FINE && made.isPresent()) {
                Level dearer = Level.values()[tree.level().ordinal() + 1];
                Dressed.KITS.get(new Tree(tree.look(), dearer, tree.height(), tree.abundance(), tree.seenFrom())).ifPresent(other ->
                        assertThat(other.total().coins()).as(tree.name()).isGreaterThan(made.get().total().coins()));
            }
        });
    }

    private static double value(Kit kit, Term term) {
        return kit.terms().stream().filter(t -> t.term() == term).mapToDouble(TermScore::value).findFirst().orElseThrow();
    }
}
