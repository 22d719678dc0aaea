package boughwright.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * Sectors of the hue ring in which the hues of a harmonious picture are said to lie, turned as a whole to where they fit best.
 *
 * <p>Y. Matsuda, "Color Design", Asakura Shoten 1995, by way of M. Tokumaru, N. Muranaka, S. Imanishi, "Color Design Support System
 * Considering Color Harmony", FUZZ-IEEE 2002, and D. Cohen-Or, O. Sorkine, R. Gal, T. Leyvand, Y.-Q. Xu, "Color Harmonization", ACM
 * Transactions on Graphics 25(3):624-630 (SIGGRAPH 2006). The widths, as shares of the ring, were read in programs written after that
 * paper (narrow 5 %, wide 26 %, the wide one of L 22 %, T 50 %), that they are the paper's own is from memory. The distance is the
 * paper's: from a hue outside to the nearest border of a sector, times how strong the colour is; here chroma and share take the place
 * of saturation and pixels. The paper turns the templates on the HSV wheel, we on the hues of OKLCH.
 *
 * <p>A remark on colours, not a judgement: the templates know nothing of lightness, nor that red and green belong to the season.
 */
public enum HueTemplate {

    /** No hue at all. */
    N("N"),
    /** One narrow sector. */
    I_SMALL("i", sector(0, 0.05)),
    /** Two narrow ones that face one another. */
    I_LARGE("I", sector(0, 0.05), sector(180, 0.05)),
    /** One wide sector. */
    V("V", sector(0, 0.26)),
    /** A narrow one and a wide one a quarter turn from it, to either side. */
    L("L", sector(0, 0.05), sector(90, 0.22)),
    /** A wide one that faces a narrow one. */
    Y("Y", sector(0, 0.26), sector(180, 0.05)),
    /** Half the ring. */
    T("T", sector(0, 0.50)),
    /** Two wide ones that face one another. */
    X("X", sector(0, 0.26), sector(180, 0.26));

    /** A mean distance in degrees, weighted by chroma and share, up to which hues count as lying within (common practice, no published source). */
    public static final double FITS = 5;

    /** @param middle degrees @param width degrees */
    public record Sector(double middle, double width) {

        /** Degrees to the nearer border, 0 inside. */
        private double distance(double hue) {
            return Math.max(0, apart(hue, middle) - width / 2);
        }
    }

    /**
     * A template where it fits best.
     *
     * @param sectors on the ring, middles in [0, 360)
     * @param distance mean degrees by which the hues miss their sectors, weighted by chroma and share
     */
    public record Fit(HueTemplate template, List<Sector> sectors, double distance) {

        public Fit {
            sectors = List.copyOf(sectors);
        }

        /** Whether the hues lie within it, near enough. */
        public boolean fits() {
            return distance <= FITS;
        }
    }

    private final String letter;
    private final List<Sector> sectors;

    HueTemplate(String letter, Sector... sectors) {
        this.letter = letter;
        this.sectors = List.of(sectors);
    }

    private static Sector sector(double middle, double share) {
        return new Sector(middle, 360 * share);
    }

    /** The letter it is published under, which it resembles. */
    public String letter() {
        return letter;
    }

    /** Before it is turned, the first sector's middle at 0°. */
    public List<Sector> sectors() {
        return sectors;
    }

    /** Degrees of the ring that it covers. */
    public double width() {
        return sectors.stream().mapToDouble(Sector::width).sum();
    }

    private record Hue(double degrees, double weight) {
    }

    /**
     * The narrowest template in which the hues lie ({@link Fit#fits}); where they lie in none, the one that they miss least.
     *
     * <p>Wide templates hold whatever narrow ones hold, so the least distance alone would nearly always name the widest.
     */
    public static Fit best(List<ColourShare> colours) {
        List<Fit> fits = new ArrayList<>();
        for (HueTemplate template : values()) {
            if (template != N || hues(colours).isEmpty()) {
                fits.add(template.fit(colours));
            }
        }
        return fits.stream().filter(Fit::fits).min(Comparator.comparingDouble(f -> f.template().width()))
                .orElseGet(() -> fits.stream().min(Comparator.comparingDouble(Fit::distance).thenComparingDouble(f -> f.template().width())).orElseThrow());
    }

    /**
     * This template where it fits the colours best; of several such places the one in which the hues lie nearest to the sectors' middles.
     *
     * <p>Exact: the distance is straight between the places at which a hue lies on a border, so it is least at one of those.
     */
    public Fit fit(List<ColourShare> colours) {
        List<Hue> hues = hues(colours);
        if (sectors.isEmpty()) {
            return new Fit(this, sectors, hues.isEmpty() ? 0 : 180);
        }
        List<Sector> best = sectors;
        double least = Double.MAX_VALUE;
        double leastOff = Double.MAX_VALUE;
        for (List<Sector> side : this == L ? List.of(sectors, mirrored()) : List.of(sectors)) {
            for (double turn : turns(side, hues)) {
                List<Sector> turned = side.stream().map(s -> new Sector(normal(s.middle() + turn), s.width())).toList();
                double distance = mean(hues, turned, false);
                double off = mean(hues, turned, true);
                // A hair's difference is rounding.
                if (distance < least - 1e-9 || distance < least + 1e-9 && off < leastOff - 1e-9) {
                    least = Math.min(least, distance);
                    leastOff = off;
                    best = turned;
                }
            }
        }
        return new Fit(this, best, hues.isEmpty() ? 0 : mean(hues, best, false));
    }

    private List<Sector> mirrored() {
        return sectors.stream().map(s -> new Sector(normal(-s.middle()), s.width())).toList();
    }

    /** Hues that are seen; neutrals have none. */
    private static List<Hue> hues(List<ColourShare> colours) {
        return colours.stream().map(c -> {
            Oklab lab = Oklab.of(c.colour());
            return new Hue(lab.hue(), Scheme.neutral(lab) ? 0 : lab.chroma() * c.share());
        }).filter(h -> h.weight() > 0).sorted(Comparator.comparingDouble(Hue::degrees).thenComparingDouble(Hue::weight)).toList();
    }

    /** Every turn at which a hue lies on a border or in a middle, and half-way between those next to one another. */
    private static List<Double> turns(List<Sector> sectors, List<Hue> hues) {
        TreeSet<Double> borders = new TreeSet<>();
        borders.add(0.0);
        for (Hue hue : hues) {
            for (Sector sector : sectors) {
                for (double offset : new double[] {-sector.width() / 2, 0, sector.width() / 2}) {
                    borders.add(normal(hue.degrees() - sector.middle() - offset));
                }
            }
        }
        List<Double> turns = new ArrayList<>(borders);
        for (int i = 1; i < borders.size(); i++) {
            turns.add((turns.get(i - 1) + turns.get(i)) / 2);
        }
        return turns;
    }

    private static double mean(List<Hue> hues, List<Sector> sectors, boolean toMiddle) {
        double sum = 0;
        double weight = 0;
        for (Hue hue : hues) {
            double nearest = sectors.stream().mapToDouble(s -> toMiddle ? apart(hue.degrees(), s.middle()) : s.distance(hue.degrees())).min().orElse(180);
            sum += hue.weight() * nearest;
            weight += hue.weight();
        }
        return weight == 0 ? 0 : sum / weight;
    }

    private static double apart(double one, double other) {
        return PaintersWheel.apart(one, other);
    }

    private static double normal(double degrees) {
        double turned = degrees % 360;
        return turned < 0 ? turned + 360 : turned;
    }
}
