package boughwright.photo;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;

/** Prints how long photos take on this machine; on demand, copied to docs/performance.md. */
public final class PhotoMeasurements {

    private PhotoMeasurements() {
    }

    public static void main(String[] args) {
        System.out.println("processors " + Runtime.getRuntime().availableProcessors() + ", java " + System.getProperty("java.version"));
        BufferedImage room = Drawn.room(4032, 3024);
        byte[] jpeg = Drawn.jpeg(room, 0.9, false);
        report("the first of all, 12 MP JPEG", jpeg, Ground.KEEP, 5, 1);
        report("room, 12 MP JPEG", jpeg, Ground.KEEP, 5, 60);
        BufferedImage busy = Drawn.noisy(Drawn.room(4032, 3024), 16, 6);
        report("room full of noise, 12 MP JPEG", Drawn.jpeg(busy, 0.92, false), Ground.KEEP, 5, 40);
        report("room, 12 MP progressive JPEG", Drawn.jpeg(room, 0.9, true), Ground.KEEP, 5, 20);
        report("room, 6 MP PNG", Drawn.png(Drawn.room(2880, 2160)), Ground.KEEP, 5, 20);
        report("room, 1600 x 1200 JPEG, as tablets send it", Drawn.jpeg(Drawn.room(1600, 1200), 0.85, false), Ground.KEEP, 5, 60);
        BufferedImage ball = Drawn.picture(4000, 3000, new Color(0xf4, 0xf3, 0xf0), pen -> { });
        Drawn.ball(ball, 2000, 1500, 1200, new Color(0xa8, 0x1c, 0x28), 0.9, 60);
        report("product on paper, 12 MP JPEG", Drawn.jpeg(Drawn.noisy(ball, 4, 5), 0.9, false), Ground.DROP, 4, 60);
        System.exit(0);
    }

    private static void report(String what, byte[] picture, Ground ground, int most, int runs) {
        ThreadMXBean processor = ManagementFactory.getThreadMXBean();
        double[] millis = new double[runs];
        double[] busy = new double[runs];
        double[] read = new double[runs];
        PhotoReading last = null;
        for (int i = 0; i < runs; i++) {
            long busySince = processor.getCurrentThreadCpuTime();
            long start = System.nanoTime();
            last = Photo.read(picture, ground, most);
            millis[i] = (System.nanoTime() - start) / 1e6;
            busy[i] = (processor.getCurrentThreadCpuTime() - busySince) / 1e6;
            busySince = processor.getCurrentThreadCpuTime();
            new PictureFile(picture).read();
            read[i] = (processor.getCurrentThreadCpuTime() - busySince) / 1e6;
        }
        Arrays.sort(millis);
        Arrays.sort(busy);
        Arrays.sort(read);
        System.out.printf(Locale.ENGLISH, "%s (%,d KB): median %.0f ms, p95 %.0f ms, most %.0f ms (%d runs); processor time median %.0f ms, p95 %.0f ms, of it unpacking %.0f ms%n    %s%n",
                what, picture.length / 1000, millis[runs / 2], millis[(int) (0.95 * (runs - 1))], millis[runs - 1], runs, busy[runs / 2],
                busy[(int) (0.95 * (runs - 1))], read[runs / 2], last);
    }
}
