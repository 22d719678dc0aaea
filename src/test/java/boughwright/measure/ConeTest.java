package boughwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lateral area π·r·s and frustum π·(R + r)·s: textbook formulas (from memory); numbers worked out by hand from them. */
class ConeTest {

    private static final Cone THREE_FOUR_FIVE = new Cone(3, 4);

    @Test
    void lateral_area_of_a_3_4_5_cone_is_fifteen_pi() {
        assertThat(THREE_FOUR_FIVE.slant()).isEqualTo(5);
        assertThat(THREE_FOUR_FIVE.area()).isCloseTo(47.1239, within(5e-5));
    }

    @Test
    void its_lower_half_has_three_quarters_of_the_area() {
        double lower = THREE_FOUR_FIVE.areaBetween(THREE_FOUR_FIVE.slantAtDrop(2), 5);
        assertThat(lower).isCloseTo(35.3429, within(5e-5));
        assertThat(lower).isCloseTo(Math.PI * (3 + 1.5) * 2.5, within(1e-12));
        assertThat(lower / THREE_FOUR_FIVE.area()).isCloseTo(0.75, within(1e-12));
    }

    @Test
    void the_top_third_by_height_has_a_ninth_of_the_area_and_the_bottom_third_five_ninths() {
        double s = THREE_FOUR_FIVE.slant();
        assertThat(THREE_FOUR_FIVE.areaBetween(0, s / 3) / THREE_FOUR_FIVE.area()).isCloseTo(1.0 / 9, within(1e-12));
        assertThat(THREE_FOUR_FIVE.areaBetween(2 * s / 3, s) / THREE_FOUR_FIVE.area()).isCloseTo(5.0 / 9, within(1e-12));
    }

    /** Height by diameter in inches and area in square feet, worked out from the formula for usual trees. */
    @ParameterizedTest
    @CsvSource({"48, 30, 16.46", "72, 45, 37.03", "84, 50, 47.80", "90, 55, 56.46", "90, 60, 62.09", "108, 66, 81.30", "120, 72, 98.40"})
    void areas_of_usual_trees_in_square_feet(double heightInches, double diameterInches, double squareFeet) {
        Cone cone = new Cone(Length.ofInches(diameterInches / 2).metres(), Length.ofInches(heightInches).metres());
        double foot = Length.METRES_PER_FOOT;
        assertThat(cone.area() / (foot * foot)).isCloseTo(squareFeet, within(0.005));
    }

    @Test
    void heights_radii_and_slants_agree_with_similar_triangles() {
        assertThat(THREE_FOUR_FIVE.radiusAt(2.5)).isCloseTo(1.5, within(1e-12));
        assertThat(THREE_FOUR_FIVE.dropAt(2.5)).isCloseTo(2, within(1e-12));
        assertThat(THREE_FOUR_FIVE.slantAtDrop(2)).isCloseTo(2.5, within(1e-12));
        assertThat(THREE_FOUR_FIVE.radiusAt(0)).isZero();
        assertThat(THREE_FOUR_FIVE.dropAt(5)).isCloseTo(4, within(1e-12));
    }

    @Test
    void along_one_line_from_the_tip_the_distance_is_the_difference_of_the_slants() {
        assertThat(THREE_FOUR_FIVE.distance(1, 4, 0)).isCloseTo(3, within(1e-12));
        assertThat(THREE_FOUR_FIVE.distance(0, 4, 2)).isCloseTo(4, within(1e-12));
        assertThat(THREE_FOUR_FIVE.distance(2, 2, 0)).isZero();
    }

    /** Unrolled, half a turn of the 3-4-5 cone is 108°: the chord 2·5·sin 54°, by hand. */
    @Test
    void opposite_points_of_the_rim_lie_a_chord_of_the_unrolled_sector_apart() {
        assertThat(THREE_FOUR_FIVE.distance(5, 5, Math.PI)).isCloseTo(10 * Math.sin(Math.toRadians(54)), within(1e-12));
    }

    /**
     * Base radius 1 and slant 3, so that it unrolls to a third of a circle: from one end of a base diameter to the other the surface is
     * shortest at 3, against π along the rim, and the shortest way round from a point of the rim back to it is 2·3·sin(π/3) =
     * 3·√3 (2·s·sin(π·r/s), "Charlie", perplexus.info, 1 July 2009).
     */
    @Test
    void shortest_ways_on_a_cone_that_unrolls_to_a_third_of_a_circle() {
        Cone third = new Cone(1, Math.sqrt(8));
        assertThat(third.slant()).isCloseTo(3, within(1e-12));
        assertThat(third.distance(3, 3, Math.PI)).isCloseTo(3, within(1e-12));
        assertThat(2 * third.distance(3, 1.5, Math.PI)).isCloseTo(3 * Math.sqrt(3), within(1e-12));
        assertThat(2 * third.distance(3, 2, Math.PI)).isCloseTo(2 * Math.sqrt(7), within(1e-12));
    }

    @Test
    void distance_goes_the_short_way_round_whatever_the_sign_or_the_turns_of_the_angle() {
        double quarter = THREE_FOUR_FIVE.distance(3, 4, Math.PI / 2);
        for (double same : new double[] {-Math.PI / 2, 3 * Math.PI / 2, -3 * Math.PI / 2, Math.PI / 2 + 20 * Math.PI}) {
            assertThat(THREE_FOUR_FIVE.distance(3, 4, same)).isCloseTo(quarter, within(1e-9));
            assertThat(THREE_FOUR_FIVE.distance(4, 3, same)).isCloseTo(quarter, within(1e-9));
        }
        assertThat(THREE_FOUR_FIVE.distance(3, 4, Math.PI)).isGreaterThan(quarter);
    }

    @Test
    void the_way_over_the_surface_is_never_shorter_than_the_straight_line_through_the_air() {
        Random random = new Random(20);
        for (int i = 0; i < 2_000; i++) {
            Cone cone = new Cone(0.2 + random.nextDouble(), 0.5 + 4 * random.nextDouble());
            double a = random.nextDouble() * cone.slant();
            double b = random.nextDouble() * cone.slant();
            double angle = (random.nextDouble() - 0.5) * 12;
            double ra = cone.radiusAt(a);
            double rb = cone.radiusAt(b);
            double flat = Math.sqrt(Math.max(0, ra * ra + rb * rb - 2 * ra * rb * Math.cos(angle)));
            double air = Math.hypot(flat, cone.dropAt(a) - cone.dropAt(b));
            assertThat(cone.distance(a, b, angle)).isGreaterThanOrEqualTo(air - 1e-9).isLessThanOrEqualTo(a + b + 1e-9);
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 4", "3, 0", "-3, 4", "3, -4", "NaN, 4", "3, NaN", "Infinity, 4", "3, Infinity"})
    void a_cone_without_a_size_is_a_defect(double radius, double height) {
        assertThatThrownBy(() -> new Cone(radius, height)).isInstanceOf(IllegalArgumentException.class);
    }
}
