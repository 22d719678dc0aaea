package boughwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.abort;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ours against colorjs.io 0.7.1, a general colour library by the editors of CSS Color 4, over 10,000 seeded cases. Each tolerance is a few times what
 * was seen. Skipped, saying so, where Node or the library is missing.
 */
class ColourLibraryTest {

    private static final Path WEB = Path.of("src/main/web");
    private static final int CASES = 10_000;

    /** One case and what the library makes of it. */
    private record Compared(Srgb one, Srgb other, Lab lab, Lab otherLab, Oklch wide, double[] theirs) {
    }

    private static List<Compared> compared;

    /** Once for all tests; where it cannot, each test is reported as skipped, with the reason. */
    @BeforeEach
    void the_library_reckons(@TempDir Path folder) throws IOException, InterruptedException {
        if (compared != null) {
            return;
        }
        assumeTrue(Files.exists(WEB.resolve("node_modules/colorjs.io/package.json")),
                "colorjs.io is not installed, so colours are not compared with it");
        SplittableRandom random = new SplittableRandom(10_000);
        List<Compared> cases = new ArrayList<>();
        for (int i = 0; i < CASES; i++) {
            cases.add(new Compared(srgb(random), srgb(random), lab(random), lab(random),
                    new Oklch(random.nextDouble(-0.02, 1.02), random.nextDouble(0.5), random.nextDouble(360)), null));
        }
        Path asked = Files.write(folder.resolve("asked"), cases.stream().map(c -> c.one.hex() + " " + c.other.hex() + " "
                + numbers(c.lab.l(), c.lab.a(), c.lab.b(), c.otherLab.l(), c.otherLab.a(), c.otherLab.b(),
                        c.wide.l(), c.wide.c(), c.wide.h())).toList());
        Path told = folder.resolve("told");
        Path complaint = folder.resolve("complaint");
        Process node = node(asked, told, complaint);
        assertThat(node.waitFor(2, TimeUnit.MINUTES)).isTrue();
        assertThat(node.exitValue()).as(Files.readString(complaint)).isZero();
        List<String> lines = Files.readAllLines(told);
        assertThat(lines).hasSize(CASES);
        List<Compared> all = new ArrayList<>();
        for (int i = 0; i < CASES; i++) {
            Compared c = cases.get(i);
            double[] theirs = Arrays.stream(lines.get(i).split(" ")).mapToDouble(Double::parseDouble).toArray();
            all.add(new Compared(c.one, c.other, c.lab, c.otherLab, c.wide, theirs));
        }
        compared = all;
    }

    private static Process node(Path asked, Path told, Path complaint) {
        Path script = Path.of("src/test/resources/colour/by-library.mjs").toAbsolutePath();
        try {
            return new ProcessBuilder("node", script.toString()).directory(WEB.toFile()).redirectInput(asked.toFile()).redirectOutput(told.toFile())
                    .redirectError(complaint.toFile()).start();
        } catch (IOException e) {
            return abort("Node is not installed, so colours are not compared with colorjs.io: " + e.getMessage());
        }
    }

    private static String numbers(double... numbers) {
        return String.join(" ", Arrays.stream(numbers).mapToObj(Double::toString).toList());
    }

    private static Srgb srgb(SplittableRandom random) {
        return new Srgb(random.nextInt(256), random.nextInt(256), random.nextInt(256));
    }

    private static Lab lab(SplittableRandom random) {
        return new Lab(random.nextDouble(100), random.nextDouble(-128, 128), random.nextDouble(-128, 128));
    }

    @Test
    void xyz_and_oklab_agree_to_twelve_digits() {
        for (Compared c : compared) {
            Xyz xyz = Xyz.of(c.one);
            assertClose(c, 0, 1e-12, xyz.x(), xyz.y(), xyz.z());
            Oklab oklab = Oklab.of(c.one);
            assertClose(c, 9, 1e-12, oklab.l(), oklab.a(), oklab.b());
        }
    }

    /** Our Lab keeps the sRGB standard's rounded matrix and white, theirs has more digits: up to 0.011 apart. */
    @Test
    void lab_agrees_to_a_small_part_of_what_an_eye_can_see() {
        for (Compared c : compared) {
            Lab lab = Lab.of(c.one);
            assertClose(c, 3, 0.02, lab.l(), lab.a(), lab.b());
        }
    }

    @Test
    void lch_and_oklch_agree() {
        for (Compared c : compared) {
            Lch lch = Lch.of(c.one);
            assertClose(c, 6, 0.02, lch.l(), lch.c());
            Oklch oklch = Oklch.of(c.one);
            assertClose(c, 12, 1e-12, oklch.l(), oklch.c());
            // A hue means little near grey: it is compared as the distance that it makes.
            assertThat(lch.c() * Math.toRadians(apart(lch.h(), c.theirs[8]))).as(c.one.hex()).isLessThan(0.02);
            assertThat(oklch.c() * Math.toRadians(apart(oklch.h(), c.theirs[14]))).as(c.one.hex()).isLessThan(1e-12);
        }
    }

    @Test
    void ciede2000_agrees_to_nine_digits() {
        for (Compared c : compared) {
            assertThat(c.lab.difference(c.otherLab)).as(c.lab + " and " + c.otherLab).isCloseTo(c.theirs[15], within(1e-9));
        }
    }

    /** WCAG rounds the weights of the primaries to four digits; the library does not. */
    @Test
    void contrast_agrees_to_three_digits() {
        for (Compared c : compared) {
            assertThat(c.one.contrast(c.other) / c.theirs[16]).as(c.one.hex() + " on " + c.other.hex()).isCloseTo(1, within(5e-4));
        }
    }

    @Test
    void colours_beyond_the_screen_are_mapped_alike() {
        int mapped = 0;
        for (Compared c : compared) {
            LinearRgb light = GamutMapping.of(c.wide);
            assertClose(c, 17, 1e-9, light.r(), light.g(), light.b());
            assertThat(c.wide.mapped()).isEqualTo(new LinearRgb(c.theirs[17], c.theirs[18], c.theirs[19]).toSrgb());
            mapped += c.wide.inGamut() ? 0 : 1;
        }
        assertThat(mapped).as("cases that needed mapping").isBetween(5_000, 9_900);
    }

    private static double apart(double hue, double other) {
        return Math.abs(Math.IEEEremainder(hue - other, 360));
    }

    private static void assertClose(Compared c, int from, double tolerance, double... ours) {
        for (int i = 0; i < ours.length; i++) {
            assertThat(ours[i]).as("case %s, number %d", c.wide, from + i).isCloseTo(c.theirs[from + i], within(tolerance));
        }
    }
}
