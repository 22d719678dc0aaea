package boughwright.house;

import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.brief.Word;
import boughwright.measure.Length;
import boughwright.rulebook.Asked;
import boughwright.rulebook.Girth;
import boughwright.rulebook.NumberInterval;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How many of something trees take by their height, as a sheet says it, right or wrong: what a chart draws. For trees of usual girth, so
 * that it needs no engine and follows each keystroke.
 *
 * @param name the word whose trees these are, such as {@code full}
 * @param points by height; a gap between two points is a gap in the table
 */
public record Curve(String name, List<Point> points) {

    /** From 3 to 20 feet in steps of a tenth, which every edge of a shop's tables falls on or near. */
    private static final int STEPS = 170;
    private static final Map<String, String> USUAL = Map.of("fullness", "medium", "seen from", "wall", "abundance", "generous");

    /**
     * @param feet height
     * @param value quantity, or share of the surface; not a number where no row or more than one answers
     */
    public record Point(double feet, double value) {

        public boolean known() {
            return !Double.isNaN(value);
        }
    }

    /** Which words tell curves of a sheet apart: one of its columns, such as {@code fullness}. */
    public static List<String> dimensions(Sheet sheet) {
        List<String> names = new ArrayList<>(sheet.grid(Grid.BASE).map(g -> g.columns().stream().map(Column::name).toList()).orElse(List.of()));
        for (Grid grid : sheet.grids()) {
            grid.columns().stream().map(Column::name).filter(n -> !names.contains(n)).forEach(names::add);
        }
        return names;
    }

    /** One curve for each word of a dimension; in all others a medium tree against a wall, dressed generously. */
    public static List<Curve> of(Sheet sheet, String dimension) {
        Optional<Column> column = sheet.grids().stream().flatMap(g -> g.columns().stream()).filter(c -> c.name().equals(dimension)).findFirst();
        return column.map(Column::choices).orElse(List.of("")).stream().map(word -> of(sheet, dimension, word)).toList();
    }

    private static Curve of(Sheet sheet, String dimension, String word) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            BigDecimal feet = BigDecimal.valueOf(30 + i, 1);
            points.add(new Point(feet.doubleValue(), value(sheet, feet, dimension, word)));
        }
        return new Curve(word, points);
    }

    private static double value(Sheet sheet, BigDecimal feet, String dimension, String word) {
        double factors = 1;
        OptionalDouble base = OptionalDouble.empty();
        for (Grid grid : sheet.grids()) {
            List<String> words = grid.columns().stream().map(c -> meant(c, dimension, word)).toList();
            OptionalDouble part = grid.name().equals(Grid.POLICY) ? OptionalDouble.of(1)
                    : grid.name().equals(Grid.BASE) && !Asked.bySurface(sheet.topic()) ? lifted(sheet, grid, feet, words, dimension, word) : answer(grid, feet, words);
            if (part.isEmpty()) {
                return Double.NaN;
            }
            if (grid.name().equals(Grid.BASE)) {
                base = part;
            } else {
                factors *= part.getAsDouble();
            }
        }
        double value = base.orElse(Double.NaN) * factors;
        return Asked.bySurface(sheet.topic()) || Double.isNaN(value) ? value : rounded(sheet, value, feet);
    }

    private static String meant(Column column, String dimension, String word) {
        return column.name().equals(dimension) ? word : USUAL.getOrDefault(column.name(), column.choices().isEmpty() ? "" : column.choices().get(0));
    }

    /** As sizing reckons it: never less than the same tree cut down to the foot of a row below would take. */
    private static OptionalDouble lifted(Sheet sheet, Grid grid, BigDecimal feet, List<String> words, String dimension, String word) {
        OptionalDouble plain = answer(grid, feet, words);
        Fullness fullness = Word.read(Fullness.class, dimension.equals("fullness") ? word : Fullness.MEDIUM.word()).orElse(Fullness.MEDIUM);
        Length height = Length.ofFeet(feet.doubleValue());
        Tree tree = new Tree(height, Tree.usualDiameter(height, fullness), fullness, SeenFrom.WALL, false, false);
        boolean girth = row(sheet, feet).map(r -> r.results().size() > 2 && r.results().get(2).equals("true")).orElse(false);
        double value = plain.orElse(Double.NaN) * (girth ? Girth.of(tree) : 1);
        for (GridRow row : grid.rows()) {
            Optional<NumberInterval> heights = row.heights().interval();
            if (heights.isPresent() && row.choices().size() == words.size() && SheetCheck.answers(grid, row, words)) {
                BigDecimal lowest = BigDecimal.valueOf(new Length(tree.widestDiameter().metres() / Tree.WIDEST).feet()).setScale(6, RoundingMode.HALF_UP);
                BigDecimal foot = heights.get().from().max(lowest);
                OptionalDouble there = foot.compareTo(feet) < 0 && heights.get().contains(foot) ? answer(grid, foot, words) : OptionalDouble.empty();
                if (there.isPresent()) {
                    value = Math.max(value, there.getAsDouble() * (girth ? Girth.of(tree.withHeight(Length.ofFeet(foot.doubleValue()))) : 1));
                }
            }
        }
        return plain.isEmpty() ? plain : OptionalDouble.of(value);
    }

    private static Optional<GridRow> row(Sheet sheet, BigDecimal feet) {
        return sheet.grid(Grid.POLICY).flatMap(p -> p.rows().stream().filter(r -> r.heights().interval().filter(i -> i.contains(feet)).isPresent()).findFirst());
    }

    private static double rounded(Sheet sheet, double value, BigDecimal feet) {
        Optional<GridRow> row = row(sheet, feet);
        if (row.isEmpty() || row.get().results().size() < 2) {
            return value;
        }
        RoundingMode mode = switch (row.get().results().get(0)) {
            case "up" -> RoundingMode.CEILING;
            case "down" -> RoundingMode.FLOOR;
            default -> RoundingMode.HALF_UP;
        };
        double least = NumberText.plain(row.get().results().get(1)).map(BigDecimal::doubleValue).orElse(0.0);
        return Math.max(least, BigDecimal.valueOf(value).setScale(9, RoundingMode.HALF_UP).setScale(0, mode).doubleValue());
    }

    /** Of the only row that answers; nothing when there is none, when there are several, or when its cell is no number. */
    private static OptionalDouble answer(Grid grid, BigDecimal feet, List<String> words) {
        GridRow found = null;
        for (GridRow row : grid.rows()) {
            Optional<NumberInterval> heights = row.heights().interval();
            boolean about = row.choices().size() == words.size() && SheetCheck.answers(grid, row, words) && heights.isPresent() && heights.get().contains(feet);
            if (about && found != null) {
                return OptionalDouble.empty();
            }
            found = about ? row : found;
        }
        if (found == null || found.results().isEmpty()) {
            return OptionalDouble.empty();
        }
        Optional<BigDecimal> amount = NumberText.plain(found.results().get(0));
        if (amount.isEmpty()) {
            return OptionalDouble.empty();
        }
        double foot = found.heights().interval().orElseThrow().from().doubleValue();
        return OptionalDouble.of(found.growing() ? amount.get().doubleValue() * Math.pow(feet.doubleValue() / foot, 2) : amount.get().doubleValue());
    }
}
