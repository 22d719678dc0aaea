package boughwright.colour;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;

/**
 * Prints how fast colour arithmetic is on this machine, on one thread; run on demand, for docs/performance.md. Times are of the processor, not of the
 * clock on the wall, so that other work on the machine counts less.
 */
public final class ColourMeasurements {

    private static final int COLOURS = 4096;
    private static final int WARM_UP = 10;
    private static final int ROUNDS = 25;

    private ColourMeasurements() {
    }

    public static void main(String[] args) {
        System.out.printf(Locale.ROOT, "processors %d, java %s, load %.2f%n", Runtime.getRuntime().availableProcessors(),
                System.getProperty("java.version"), ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        SplittableRandom random = new SplittableRandom(2000);
        Srgb[] colours = new Srgb[COLOURS];
        Arrays.setAll(colours, i -> new Srgb(random.nextInt(256), random.nextInt(256), random.nextInt(256)));
        Lab[] labs = Arrays.stream(colours).map(Lab::of).toArray(Lab[]::new);
        Oklch[] wide = new Oklch[COLOURS];
        Arrays.setAll(wide, i -> new Oklch(random.nextDouble(), 0.2 + random.nextDouble(0.3), random.nextDouble(360)));
        pairs("CIEDE2000 of a pair, equations as printed", labs, PrintedCiede2000::difference);
        pairs("CIEDE2000 of a pair, ours", labs, Lab::difference);
        each("Lab of sRGB", colours, 16, c -> Lab.of(c).a());
        each("Oklab of sRGB", colours, 16, c -> Oklab.of(c).a());
        each("OKLCH of sRGB", colours, 16, c -> Oklch.of(c).h());
        each("sRGB of OKLCH that mostly lies beyond it, mapped", wide, 2, c -> c.mapped().green());
        each("name of sRGB", Arrays.copyOf(colours, 512), 1, c -> ColourName.of(c).number());
    }

    /** Each round takes every colour with 64 others. */
    private static void pairs(String what, Lab[] labs, ToDoubleBiFunction<Lab, Lab> difference) {
        time(what, 64 * labs.length, () -> {
            double sum = 0;
            for (int step = 1; step <= 64; step++) {
                for (int i = 0; i < labs.length; i++) {
                    sum += difference.applyAsDouble(labs[i], labs[(i + step * 61) % labs.length]);
                }
            }
            return sum;
        });
    }

    private static <T> void each(String what, T[] inputs, int times, ToDoubleFunction<T> work) {
        time(what, times * inputs.length, () -> {
            double sum = 0;
            for (int i = 0; i < times; i++) {
                for (T input : inputs) {
                    sum += work.applyAsDouble(input);
                }
            }
            return sum;
        });
    }

    /** What comes out is summed and printed, so that nothing can be left out. */
    private static void time(String what, int calls, DoubleSupplier round) {
        ThreadMXBean thread = ManagementFactory.getThreadMXBean();
        double sum = 0;
        double[] nanos = new double[ROUNDS];
        for (int i = -WARM_UP; i < ROUNDS; i++) {
            long start = thread.getCurrentThreadCpuTime();
            sum += round.getAsDouble();
            if (i >= 0) {
                nanos[i] = (thread.getCurrentThreadCpuTime() - start) / (double) calls;
            }
        }
        Arrays.sort(nanos);
        System.out.printf(Locale.ROOT, "%s: median %.0f ns, least %.0f ns, most %.0f ns (%d rounds of %d; sum %.6g)%n", what, nanos[ROUNDS / 2],
                nanos[0], nanos[ROUNDS - 1], ROUNDS, calls, sum);
    }
}
