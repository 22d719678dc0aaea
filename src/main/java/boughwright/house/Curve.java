package boughwright.house;

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
        Map<String, String> usual = Map.of("fullness", "medium", "seen from", "wall", "abundance", "generous");
        double value = 1;
        for (Grid grid : sheet.grids()) {
            if (!grid.name().equals(Grid.POLICY)) {
                List<String> words = grid.columns().stream()
                        .map(c -> c.name().equals(dimension) ? word : usual.getOrDefault(c.name(), c.choices().isEmpty() ? "" : c.choices().get(0))).toList();
                OptionalDouble part = answer(grid, feet, words, 0);
                if (part.isEmpty()) {
                    return Double.NaN;
                }
                value *= part.getAsDouble();
            }
        }
        return boughwright.rulebook.Asked.bySurface(sheet.topic()) ? value : rounded(sheet, value, feet);
    }

    private static double rounded(Sheet sheet, double value, BigDecimal feet) {
        Optional<Grid> policy = sheet.grid(Grid.POLICY);
        Optional<GridRow> row = policy.flatMap(p -> p.rows().stream().filter(r -> r.heights().interval().filter(i -> i.contains(feet)).isPresent()).findFirst());
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
    private static OptionalDouble answer(Grid grid, BigDecimal feet, List<String> words, int result) {
        GridRow found = null;
        for (GridRow row : grid.rows()) {
            Optional<NumberInterval> heights = row.heights().interval();
            boolean about = row.choices().size() == words.size() && SheetCheck.answers(grid, row, words) && heights.isPresent() && heights.get().contains(feet);
            if (about && found != null) {
                return OptionalDouble.empty();
            }
            found = about ? row : found;
        }
        if (found == null || found.results().size() <= result) {
            return OptionalDouble.empty();
        }
        Optional<BigDecimal> amount = NumberText.plain(found.results().get(result));
        if (amount.isEmpty()) {
            return OptionalDouble.empty();
        }
        double foot = found.heights().interval().orElseThrow().from().doubleValue();
        return OptionalDouble.of(found.growing() ? amount.get().doubleValue() * Math.pow(feet.doubleValue() / foot, 2) : amount.get().doubleValue());
    }
}
