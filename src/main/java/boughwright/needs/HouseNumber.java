package boughwright.needs;

import boughwright.brief.Word;
import java.math.BigDecimal;

/**
 * The numbers that a shop sets for its own style, its design score and its cautions; what trees take stands in tables instead.
 *
 * <p>Each has a measure and bounds. A number with a {@link Guard} is a caution's threshold whose shipped value, with its source in the
 * rule that reads it, is the floor of safety: the bounds let a shop be stricter, never laxer. All others are common practice with no
 * published source; their bounds only catch slips.
 */
public enum HouseNumber implements Word {

    TALL_TREE(Theme.TOPPER, Measure.LENGTH, "1.2192", "4.572"),
    TALL_TOPPER_LEAST(Theme.TOPPER, Measure.LENGTH, "0.2032", "2.1336"),
    TALL_TOPPER_MOST(Theme.TOPPER, Measure.LENGTH, "0.3048", "3.048"),
    LOW_TOPPER_LEAST(Theme.TOPPER, Measure.LENGTH, "0.1016", "2.1336"),
    LOW_TOPPER_MOST(Theme.TOPPER, Measure.LENGTH, "0.2032", "3.048"),
    TOPPER_TEXTURES(Theme.TOPPER, Measure.COUNT, "1", "4"),

    SCHEME_TEXTURES(Theme.VARIETY, Measure.COUNT, "1", "10"),
    BALL_FINISHES(Theme.VARIETY, Measure.COUNT, "1", "4"),
    ORNAMENT_FINISHES(Theme.VARIETY, Measure.COUNT, "1", "5"),
    FLOWER_SCALES(Theme.VARIETY, Measure.COUNT, "1", "3"),

    CLUSTER_FLOWERS(Theme.PIECES, Measure.COUNT, "1", "3"),
    SINGLE_FLOWER_LEAST(Theme.PIECES, Measure.LENGTH, "0.0254", "0.4064"),
    SINGLE_FLOWER_MOST(Theme.PIECES, Measure.LENGTH, "0.0508", "0.6096"),
    SMALL_TREE(Theme.PIECES, Measure.LENGTH, "0.9144", "2.4384"),
    SMALL_TREE_FLOWER(Theme.PIECES, Measure.LENGTH, "0.0508", "0.4064"),
    /** The largest that goes into each zone, by the measure that sticks out: balls deep, sprays in the middle, flowers outside, features at the tips. */
    LARGEST_DEEP(Theme.PIECES, Measure.LENGTH, "0.0508", "0.4064"),
    LARGEST_MIDDLE(Theme.PIECES, Measure.LENGTH, "0.2032", "2.1336"),
    LARGEST_OUTER(Theme.PIECES, Measure.LENGTH, "0.0508", "0.6096"),
    LARGEST_TIP(Theme.PIECES, Measure.LENGTH, "0.0508", "0.6096"),

    TAIL(Theme.RIBBON, Measure.LENGTH, "0.0508", "0.6096"),
    LOOP(Theme.RIBBON, Measure.LENGTH, "0.2032", "1.524"),
    SMALL_LOOP(Theme.RIBBON, Measure.LENGTH, "0.1016", "1.016"),
    BOW_LOOP(Theme.RIBBON, Measure.LENGTH, "0.1016", "1.016"),
    SMALL_TREE_LOOP(Theme.RIBBON, Measure.LENGTH, "0.2032", "1.524"),
    SMALL_TREE_SMALL_LOOP(Theme.RIBBON, Measure.LENGTH, "0.1016", "1.016"),
    SMALL_TREE_BOW_LOOP(Theme.RIBBON, Measure.LENGTH, "0.1016", "1.016"),
    /** Of a dozen runs, those that are varied by a small loop between or by a bow at the end. */
    RUNS_WITH_SMALL_LOOP(Theme.RIBBON, Measure.COUNT, "0", "12"),
    RUNS_WITH_END_BOW(Theme.RIBBON, Measure.COUNT, "0", "12"),
    ONE_LOOP_GAP(Theme.RIBBON, Measure.LENGTH, "0.0508", "0.508"),
    TWO_LOOP_GAP(Theme.RIBBON, Measure.LENGTH, "0.0508", "0.8128"),
    TAILS_RIBBON(Theme.RIBBON, Measure.LENGTH, "0.1016", "1.016"),
    ONE_LOOP_RIBBON(Theme.RIBBON, Measure.LENGTH, "0.2032", "2.1336"),
    TWO_LOOP_RIBBON(Theme.RIBBON, Measure.LENGTH, "0.3048", "3.048"),

    /** CIE L* of the darker flower. */
    DARK_FLOWER(Theme.COLOUR, Measure.LIGHTNESS, "10", "70"),
    MAIN_SHARE(Theme.COLOUR, Measure.PERCENT, "0", "100"),
    SECOND_SHARE(Theme.COLOUR, Measure.PERCENT, "0", "100"),
    SPARK_SHARE(Theme.COLOUR, Measure.PERCENT, "0", "100"),

    SCORE_LOOK_FIT(Theme.SCORE, Measure.POINTS, "0", "60"),
    SCORE_PALETTE_FIT(Theme.SCORE, Measure.POINTS, "0", "60"),
    SCORE_PALETTE_SHARES(Theme.SCORE, Measure.POINTS, "0", "60"),
    SCORE_TEXTURE_VARIETY(Theme.SCORE, Measure.POINTS, "0", "60"),
    SCORE_FINISH_MIX(Theme.SCORE, Measure.POINTS, "0", "60"),
    SCORE_SCALE_MIX(Theme.SCORE, Measure.POINTS, "0", "60"),
    SCORE_NO_NEAR_MISS(Theme.SCORE, Measure.POINTS, "0", "60"),
    SCORE_HOUSE_PREFERENCE(Theme.SCORE, Measure.POINTS, "0", "60"),
    SCORE_NO_LEFTOVERS(Theme.SCORE, Measure.POINTS, "0", "60"),
    SCORE_THRIFT(Theme.SCORE, Measure.POINTS, "0", "60"),

    HEAT_DISTANCE(Theme.CAUTIONS, Measure.LENGTH, "0.9144", "6.096", Guard.NOT_BELOW),
    CEILING_CLEARANCE(Theme.CAUTIONS, Measure.LENGTH, "0.1524", "1.016", Guard.NOT_BELOW),
    REACH_HEIGHT(Theme.CAUTIONS, Measure.LENGTH, "1.2192", "2.4384", Guard.NOT_BELOW),
    CIRCUIT_SHARE(Theme.CAUTIONS, Measure.PERCENT, "20", "80", Guard.NOT_ABOVE),
    ANCHOR_FROM(Theme.CAUTIONS, Measure.LENGTH, "0.9144", "2.286", Guard.NOT_ABOVE),
    PRACTICE_ENDS(Theme.CAUTIONS, Measure.LENGTH, "1.8288", "3.6576", Guard.NOT_ABOVE),
    DENSEST_STEMS(Theme.CAUTIONS, Measure.PER_FOOT, "3.4", "11.2", Guard.NOT_ABOVE);

    /** What a number is about; numbers of one theme stand on one page. */
    public enum Theme implements Word { TOPPER, VARIETY, PIECES, RIBBON, COLOUR, SCORE, CAUTIONS }

    /** What is counted: lengths in metres, percents of 100, lightness as CIE L*, points of the design score, pieces for each foot of height. */
    public enum Measure { LENGTH, COUNT, PERCENT, LIGHTNESS, POINTS, PER_FOOT }

    /** On which side of its floor a caution's threshold must stay. */
    public enum Guard { NONE, NOT_BELOW, NOT_ABOVE }

    /** Far finer than anybody measures; a number of a thousand million digits behind the point fills the memory when it is written out. */
    private static final int MOST_DECIMALS = 9;

    private final Theme theme;
    private final Measure measure;
    private final BigDecimal least;
    private final BigDecimal most;
    private final Guard guard;

    HouseNumber(Theme theme, Measure measure, String least, String most) {
        this(theme, measure, least, most, Guard.NONE);
    }

    HouseNumber(Theme theme, Measure measure, String least, String most, Guard guard) {
        this.theme = theme;
        this.measure = measure;
        this.least = new BigDecimal(least);
        this.most = new BigDecimal(most);
        this.guard = guard;
    }

    public Theme theme() {
        return theme;
    }

    public Measure measure() {
        return measure;
    }

    /** The least that is allowed, in the unit of the measure. */
    public BigDecimal least() {
        return least;
    }

    /** The most that is allowed, in the unit of the measure. */
    public BigDecimal most() {
        return most;
    }

    public Guard guard() {
        return guard;
    }

    /** Whether a value lies within the bounds, is whole where things are counted, else of nine decimals at most, and never laxer than the floor of safety. */
    public boolean allows(BigDecimal value) {
        boolean whole = value.stripTrailingZeros().scale() <= (measure == Measure.COUNT ? 0 : MOST_DECIMALS);
        return whole && value.compareTo(least) >= 0 && value.compareTo(most) <= 0;
    }
}
