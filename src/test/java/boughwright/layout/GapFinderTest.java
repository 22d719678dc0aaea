package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.brief.SeenFrom;
import boughwright.layout.GapFinder.Filled;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The largest empty disc, against brute force over a fine grid and cases that can be worked out by hand. */
class GapFinderTest {

    private static final double FINE = 0.008;

    private static double clear(Surface surface, double slant, double angle, List<Filled> filled) {
        double best = Math.min(slant - surface.top(), surface.bottom() - slant);
        if (!surface.round()) {
            best = Math.min(best, (surface.sector() / 2 - Math.abs(angle)) * surface.radius(slant));
        }
        Point point = surface.point(slant, angle, 1);
        for (Filled f : filled) {
            best = Math.min(best, point.distance(f.at()) - f.radius());
        }
        return best;
    }

    private static double brute(Surface surface, List<Filled> filled) {
        double best = 0;
        for (double slant = surface.top(); slant <= surface.bottom(); slant += FINE) {
            for (double angle = -surface.sector() / 2; angle <= surface.sector() / 2; angle += FINE / surface.radius(slant)) {
                best = Math.max(best, clear(surface, slant, angle, filled));
            }
        }
        return 2 * best;
    }

    private static List<Filled> random(Surface surface, int count, SplittableRandom random) {
        List<Filled> filled = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            filled.add(new Filled(surface.point(surface.slantAtArea(random.nextDouble()), surface.angleAt(random.nextDouble()), 1),
                    0.02 + 0.06 * random.nextDouble()));
        }
        return filled;
    }

    @Test
    void no_disc_on_a_fine_grid_is_larger_than_the_one_that_is_found() {
        SplittableRandom random = new SplittableRandom(11);
        for (SeenFrom side : SeenFrom.values()) {
            for (double feet : new double[] {4, 9}) {
                Surface surface = TreeFixture.surface(feet, side);
                for (int count : new int[] {5, 40, 150}) {
                    List<Filled> filled = random(surface, count, random);
                    GapFinder.Hole hole = new GapFinder(surface, filled).largest();
                    double brute = brute(surface, filled);
                    // A grid of 8 mm may miss the middle by 6 mm each way; ours may stop a millimetre short of the top of a ridge.
                    assertThat(hole.diameter()).as("%s %s ft, %s discs", side, feet, count).isBetween(brute - 0.004, brute + 2 * FINE * 0.75);
                    assertThat(hole.diameter() / 2).isCloseTo(clear(surface, hole.place().slant(), hole.place().angle(), filled), within(1e-9));
                }
            }
        }
    }

    @Test
    void holes_found_after_filling_are_those_of_a_fresh_search() {
        SplittableRandom random = new SplittableRandom(5);
        Surface surface = TreeFixture.surface(7.5, SeenFrom.ROUND);
        List<Filled> filled = random(surface, 60, random);
        GapFinder finder = new GapFinder(surface, filled);
        for (int i = 0; i < 25; i++) {
            GapFinder.Hole hole = finder.largest();
            assertThat(hole.diameter()).as("hole %s", i).isCloseTo(new GapFinder(surface, filled).largest().diameter(), within(0.002));
            Filled more = new Filled(hole.at(), 0.33 * hole.diameter());
            finder.fill(more);
            filled.add(more);
        }
    }

    @Test
    void the_hole_of_a_bare_corner_touches_its_two_edges_and_the_rim() {
        Surface surface = TreeFixture.surface(9, SeenFrom.CORNER);
        GapFinder.Hole hole = new GapFinder(surface, List.of()).largest();
        // In the middle the way to a straight edge is an eighth of a turn of the circle there, as long as that to the rim below it.
        double slant = surface.bottom() / (1 + Math.PI / 4 * surface.widening());
        assertThat(hole.diameter()).isCloseTo(2 * (surface.bottom() - slant), within(0.002));
        assertThat(hole.place().angle()).isCloseTo(0, within(0.01));
    }
}
