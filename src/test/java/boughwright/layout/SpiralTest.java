package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.brief.SeenFrom;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The golden-angle spiral by itself, against values computed from published formulas. */
class SpiralTest {

    /** Densest equal circles cover π/√12 of the plane (Thue; Fejes Tóth), so n discs on an area are at most so far apart. */
    private static double densest(double area, int n) {
        return Math.sqrt(2 * area / (Math.sqrt(3) * n));
    }

    private static double leastDistance(Surface surface, int count) {
        List<Point> points = new ArrayList<>();
        Patterns.spiral(surface, count, 0).forEach(w -> points.add(surface.point(w.slant(), w.angle(), 1)));
        double least = Double.MAX_VALUE;
        for (int i = 0; i < count; i++) {
            for (int j = i + 1; j < count; j++) {
                least = Math.min(least, points.get(i).distance(points.get(j)));
            }
        }
        return least;
    }

    @Test
    void the_golden_angle_is_137_50776405_degrees() {
        // 360 · (1 − 1/φ), in the other direction of turn.
        assertThat(360 * (1 - Patterns.GOLDEN)).isCloseTo(137.50776405, within(1e-8));
    }

    @Test
    void the_spiral_alone_is_at_least_four_fifths_as_even_as_the_densest_packing() {
        for (int count = 50; count <= 1000; count += 50) {
            Surface surface = TreeFixture.surface(9, SeenFrom.ROUND);
            assertThat(leastDistance(surface, count) / densest(surface.area(), count)).as("%s points", count).isGreaterThanOrEqualTo(0.80);
        }
    }

    @Test
    void the_spiral_keeps_its_evenness_on_every_side() {
        for (SeenFrom side : SeenFrom.values()) {
            for (int count = 50; count <= 1000; count += 50) {
                Surface surface = TreeFixture.surface(9, side);
                assertThat(leastDistance(surface, count) / densest(surface.area(), count)).as("%s points, %s", count, side)
                        .isGreaterThanOrEqualTo(0.60);
            }
        }
    }

    @Test
    void equal_steps_of_the_spiral_are_equal_areas() {
        Surface surface = TreeFixture.surface(9, SeenFrom.WALL);
        List<Patterns.Wished> places = Patterns.spiral(surface, 100, 0.3);
        double ring = places.get(1).slant() * places.get(1).slant() - places.get(0).slant() * places.get(0).slant();
        for (int i = 1; i < places.size(); i++) {
            double step = places.get(i).slant() * places.get(i).slant() - places.get(i - 1).slant() * places.get(i - 1).slant();
            assertThat(step).isCloseTo(ring, within(1e-9));
        }
    }

    @Test
    void the_dressed_area_is_that_of_a_frustum_times_the_seen_share() {
        // Frustum π·(R + r)·s (textbook), a third of the cone's slant lying between its top and its bottom.
        Surface surface = TreeFixture.surface(9, SeenFrom.BAY);
        double top = surface.cone().radius() * surface.top() / surface.cone().slant();
        double bottom = surface.cone().radius() * surface.bottom() / surface.cone().slant();
        assertThat(surface.area()).isCloseTo(0.75 * Math.PI * (top + bottom) * (surface.bottom() - surface.top()), within(1e-9));
    }
}
