package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.measure.Length;
import boughwright.needs.Adjustments;
import boughwright.needs.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** No quantity falls as a tree grows, widens, is fuller, is seen from more sides or is dressed more lavishly. Seeded. */
class NothingFallsTest {

    private static final Brief ANY = RulebookFixture.brief("9 ft");
    private static final Sizing SIZING = new Sizing(RulebookFixture.shipped().tables(), boughwright.text.Words.NONE);
    /** The feet at which some row of some table begins or ends. */
    private static final double[] EDGES = {3, 4, 5, 6, 7, 7.5, 8, 9, 10, 11, 11.5, 11.75, 12, 20};

    @ParameterizedTest
    @EnumSource(Fullness.class)
    void as_a_tree_of_usual_shape_grows(Fullness fullness) {
        List<Step> walk = new ArrayList<>();
        for (double feet : heights(3, 20, 0.1)) {
            Length height = Length.ofFeet(feet);
            walk.add(step(height, Tree.usualDiameter(height, fullness), fullness, SeenFrom.WALL, Abundance.GENEROUS));
        }
        assertNothingFalls(walk);
    }

    @Test
    void as_a_tree_of_one_diameter_grows() {
        Random random = new Random(9);
        for (int i = 0; i < 12; i++) {
            double inches = i < 4 ? new double[] {36, 62, 100, 144}[i] : 8 + random.nextDouble() * 180;
            Length diameter = Length.ofInches(inches);
            SeenFrom seenFrom = any(random, SeenFrom.values());
            Fullness fullness = any(random, Fullness.values());
            Abundance abundance = any(random, Abundance.values());
            List<Step> walk = new ArrayList<>();
            double lowest = Math.max(3, diameter.feet() / Tree.WIDEST);
            for (double feet : heights(lowest, Math.min(20, diameter.feet() / Tree.NARROWEST), 0.4)) {
                walk.add(step(Length.ofFeet(feet), diameter, fullness, seenFrom, abundance));
            }
            assertNothingFalls(walk);
        }
    }

    @Test
    void as_a_tree_of_one_height_widens() {
        Random random = new Random(62);
        for (double feet : new double[] {3, 4.99, 6.5, 7.5, 8, 9, 9.99, 11.8, 12, 12.01, 15, 20}) {
            SeenFrom seenFrom = any(random, SeenFrom.values());
            Abundance abundance = any(random, Abundance.values());
            List<Step> walk = new ArrayList<>();
            for (double taper = Tree.NARROWEST; taper <= Tree.WIDEST; taper += 0.025) {
                walk.add(step(Length.ofFeet(feet), Length.ofFeet(feet * taper), Fullness.MEDIUM, seenFrom, abundance));
            }
            assertNothingFalls(walk);
        }
    }

    @Test
    void as_a_tree_is_fuller_seen_from_more_sides_or_dressed_more_lavishly() {
        Random random = new Random(360);
        for (int i = 0; i < 40; i++) {
            Length height = Length.ofFeet(3 + 17 * random.nextDouble());
            Length measured = new Length(height.metres() * (Tree.NARROWEST + (Tree.WIDEST - Tree.NARROWEST) * random.nextDouble()));
            Fullness fullness = any(random, Fullness.values());
            SeenFrom seenFrom = any(random, SeenFrom.values());
            Abundance abundance = any(random, Abundance.values());
            assertNothingFalls(steps(Fullness.values(), f -> step(height, measured, f, seenFrom, abundance)));
            assertNothingFalls(steps(Fullness.values(), f -> step(height, Tree.usualDiameter(height, f), f, seenFrom, abundance)));
            assertNothingFalls(steps(SeenFrom.values(), s -> step(height, measured, fullness, s, abundance)));
            assertNothingFalls(steps(Abundance.values(), a -> step(height, measured, fullness, seenFrom, a)));
        }
    }

    private record Step(Tree tree, Abundance abundance, Map<String, Integer> quantities) {
    }

    private static Step step(Length height, Length diameter, Fullness fullness, SeenFrom seenFrom, Abundance abundance) {
        Tree tree = new Tree(height, diameter, fullness, seenFrom, false, false);
        Map<String, Integer> quantities = new TreeMap<>();
        for (Need need : Sizer.needs(SIZING, ANY.withTree(tree).withAbundance(abundance), Adjustments.NONE, 2)) {
            quantities.put(need.id(), need.quantity());
        }
        return new Step(tree, abundance, quantities);
    }

    private static void assertNothingFalls(List<Step> walk) {
        for (int i = 1; i < walk.size(); i++) {
            Step before = walk.get(i - 1);
            Step after = walk.get(i);
            before.quantities().forEach((id, quantity) -> assertThat(after.quantities().getOrDefault(id, 0))
                    .as(() -> id + " from " + before.tree() + " " + before.abundance() + " to " + after.tree() + " " + after.abundance())
                    .isGreaterThanOrEqualTo(quantity));
        }
    }

    /** From one height to the other in even steps, with the tables' edges and a hair to either side of them. */
    private static double[] heights(double from, double to, double step) {
        List<Double> heights = new ArrayList<>();
        for (double feet = from; feet <= to; feet += step) {
            heights.add(feet);
        }
        for (double edge : EDGES) {
            heights.addAll(List.of(edge - 1e-4, edge, edge + 1e-4));
        }
        return heights.stream().mapToDouble(Double::doubleValue).filter(feet -> feet >= from && feet <= to).sorted().toArray();
    }

    private static <T> T any(Random random, T[] choices) {
        return choices[random.nextInt(choices.length)];
    }

    private static <T> List<Step> steps(T[] choices, java.util.function.Function<T, Step> step) {
        return java.util.Arrays.stream(choices).map(step).toList();
    }
}
