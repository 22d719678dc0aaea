package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Ciede2000Test {

    /**
     * G. Sharma, W. Wu, E. N. Dalal, "The CIEDE2000 Color-Difference Formula: Implementation Notes, Supplementary Test Data, and
     * Mathematical Observations", Color Research &amp; Application 30(1):21-30, 2005, Table 1: L*, a*, b* of either colour, then ΔE00.
     */
    @ParameterizedTest
    @CsvSource({
        "50.0000, 2.6772, -79.7751, 50.0000, 0.0000, -82.7485, 2.0425",
        "50.0000, 3.1571, -77.2803, 50.0000, 0.0000, -82.7485, 2.8615",
        "50.0000, 2.8361, -74.0200, 50.0000, 0.0000, -82.7485, 3.4412",
        "50.0000, -1.3802, -84.2814, 50.0000, 0.0000, -82.7485, 1.0000",
        "50.0000, -1.1848, -84.8006, 50.0000, 0.0000, -82.7485, 1.0000",
        "50.0000, -0.9009, -85.5211, 50.0000, 0.0000, -82.7485, 1.0000",
        "50.0000, 0.0000, 0.0000, 50.0000, -1.0000, 2.0000, 2.3669",
        "50.0000, -1.0000, 2.0000, 50.0000, 0.0000, 0.0000, 2.3669",
        "50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0009, 7.1792",
        "50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0010, 7.1792",
        "50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0011, 7.2195",
        "50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0012, 7.2195",
        "50.0000, -0.0010, 2.4900, 50.0000, 0.0009, -2.4900, 4.8045",
        "50.0000, -0.0010, 2.4900, 50.0000, 0.0010, -2.4900, 4.8045",
        "50.0000, -0.0010, 2.4900, 50.0000, 0.0011, -2.4900, 4.7461",
        "50.0000, 2.5000, 0.0000, 50.0000, 0.0000, -2.5000, 4.3065",
        "50.0000, 2.5000, 0.0000, 73.0000, 25.0000, -18.0000, 27.1492",
        "50.0000, 2.5000, 0.0000, 61.0000, -5.0000, 29.0000, 22.8977",
        "50.0000, 2.5000, 0.0000, 56.0000, -27.0000, -3.0000, 31.9030",
        "50.0000, 2.5000, 0.0000, 58.0000, 24.0000, 15.0000, 19.4535",
        "50.0000, 2.5000, 0.0000, 50.0000, 3.1736, 0.5854, 1.0000",
        "50.0000, 2.5000, 0.0000, 50.0000, 3.2972, 0.0000, 1.0000",
        "50.0000, 2.5000, 0.0000, 50.0000, 1.8634, 0.5757, 1.0000",
        "50.0000, 2.5000, 0.0000, 50.0000, 3.2592, 0.3350, 1.0000",
        "60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644",
        "63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.2630",
        "61.2901, 3.7196, -5.3901, 61.4292, 2.2480, -4.9620, 1.8731",
        "35.0831, -44.1164, 3.7933, 35.0232, -40.0716, 1.5901, 1.8645",
        "22.7233, 20.0904, -46.6940, 23.0331, 14.9730, -42.5619, 2.0373",
        "36.4612, 47.8580, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146",
        "90.8027, -2.0831, 1.4410, 91.1528, -1.6435, 0.0447, 1.4441",
        "90.9257, -0.5406, -0.9208, 88.6381, -0.8985, -0.7239, 1.5381",
        "6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377",
        "2.0776, 0.0795, -1.1350, 0.9033, -0.0636, -0.5514, 0.9082"
    })
    void each_published_pair_differs_as_published_either_way_round(
            double l1, double a1, double b1, double l2, double a2, double b2, double difference) {
        Lab one = new Lab(l1, a1, b1);
        Lab two = new Lab(l2, a2, b2);
        // The table is rounded to four decimals.
        assertThat(one.difference(two)).isCloseTo(difference, within(5.0001e-5));
        assertThat(two.difference(one)).isCloseTo(difference, within(5.0001e-5));
    }

    @Test
    void a_colour_does_not_differ_from_itself_and_the_order_never_matters() {
        Random random = new Random(2000);
        for (int i = 0; i < 5_000; i++) {
            Lab one = lab(random);
            Lab two = lab(random);
            assertThat(one.difference(one)).isZero();
            assertThat(one.difference(two)).isEqualTo(two.difference(one)).isGreaterThan(0);
        }
    }

    @Test
    void the_fast_form_is_the_printed_one() {
        Random random = new Random(2005);
        for (int i = 0; i < 50_000; i++) {
            Lab one = lab(random);
            assertAsPrinted(one, lab(random));
            assertAsPrinted(one, near(one, Math.pow(10, -6 * random.nextDouble()), random));
            // Hues next to opposite, and mean hues next to 0.
            double turn = Math.copySign(Math.pow(10, -6 * random.nextDouble()), random.nextDouble() - 0.5);
            double times = random.nextDouble() * 3 + 0.01;
            assertAsPrinted(one, turned(new Lab(40, -times * one.a(), -times * one.b()), turn));
            assertAsPrinted(one, turned(new Lab(40, times * one.a(), -times * one.b()), turn));
        }
    }

    @Test
    void opposite_hues_are_180_degrees_apart_whatever_the_last_bit_says() {
        Random random = new Random(180);
        for (int i = 0; i < 20_000; i++) {
            Lab one = lab(random);
            double times = random.nextDouble() * 3 + 0.01;
            Lab two = new Lab(40, -times * one.a(), -times * one.b());
            // As printed just on that side where the step is less than 180°: there the mean hue lies between the two.
            double turn = one.b() > 0 || one.b() == 0 && one.a() > 0 ? -1e-8 : 1e-8;
            double beside = PrintedCiede2000.difference(one, turned(two, turn));
            assertThat(one.difference(two)).isCloseTo(beside, within(1e-5)).isEqualTo(two.difference(one));
        }
    }

    @Test
    void a_mean_hue_of_zero_is_not_one_of_360() {
        Random random = new Random(360);
        for (int i = 0; i < 20_000; i++) {
            Lab one = new Lab(random.nextDouble() * 100, random.nextDouble() * 100, random.nextDouble() * 100);
            double times = random.nextDouble() * 3 + 0.01;
            Lab two = new Lab(40, times * one.a(), -times * one.b());
            double beside = PrintedCiede2000.difference(one, turned(two, 1e-8));
            assertThat(one.difference(two)).isCloseTo(beside, within(1e-6)).isEqualTo(two.difference(one));
        }
    }

    @Test
    void greys_and_nearly_greys_differ_as_printed() {
        double[] chromas = {0, 1e-200, 1.1e-9, 3e-6, 1.7e-3, 0.13, 1};
        for (double a : chromas) {
            for (double b : chromas) {
                for (double c : chromas) {
                    assertAsPrinted(new Lab(30, a, -b), new Lab(31, -c, 1.3 * a));
                    assertAsPrinted(new Lab(30, a, b), new Lab(30, c, 0));
                }
            }
        }
    }

    private static void assertAsPrinted(Lab one, Lab two) {
        double difference = one.difference(two);
        assertThat(difference).as(() -> one + " and " + two).isCloseTo(PrintedCiede2000.difference(one, two), within(1e-9));
        assertThat(two.difference(one)).as(() -> one + " and " + two).isEqualTo(difference);
    }

    /** The colour with its hue turned by an angle in radians that is small. */
    private static Lab turned(Lab lab, double angle) {
        return new Lab(lab.l(), lab.a() - angle * lab.b(), lab.b() + angle * lab.a());
    }

    private static Lab near(Lab lab, double step, Random random) {
        return new Lab(lab.l() + step * random.nextGaussian(), lab.a() + step * random.nextGaussian(), lab.b() + step * random.nextGaussian());
    }

    private static Lab lab(Random random) {
        return new Lab(random.nextDouble() * 100, random.nextDouble() * 200 - 100, random.nextDouble() * 200 - 100);
    }
}
