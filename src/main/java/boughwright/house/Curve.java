package boughwright.house;

import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.brief.Word;
import boughwright.measure.Length;
import boughwright.rulebook.Asked;
import boughwright.rulebook.Girth;
import boughwright.rulebook.Growing;
import boughwright.rulebook.NumberInterval;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
        Reading reading = new Reading(sheet, dimension, word);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            BigDecimal feet = BigDecimal.valueOf(30 + i, 1);
            points.add(new Point(feet.doubleValue(), reading.value(feet)));
        }
        return new Curve(word, points);
    }

    /** A sheet as it is for one word of a dimension: rows that do not speak of it left out, cells read once. */
    private static final class Reading {

        private final boolean bySurface;
        private final Fullness fullness;
        private final List<Row> base;
        private final List<List<Row>> factors = new ArrayList<>();
        private final List<Row> policy;

        /** @param amount empty when the cell is no number */
        private record Row(NumberInterval heights, Optional<BigDecimal> amount, GridRow written) {

            double at(BigDecimal feet) {
                BigDecimal number = amount.orElseThrow();
                return written.growing() ? new Growing(number, heights.from()).at(feet.doubleValue()) : number.doubleValue();
            }
        }

        Reading(Sheet sheet, String dimension, String word) {
            bySurface = Asked.bySurface(sheet.topic());
            fullness = Word.read(Fullness.class, dimension.equals("fullness") ? word : Fullness.MEDIUM.word()).orElse(Fullness.MEDIUM);
            base = sheet.grid(Grid.BASE).map(g -> rows(g, dimension, word)).orElse(List.of());
            policy = sheet.grid(Grid.POLICY).map(g -> rows(g, dimension, word)).orElse(List.of());
            sheet.grids().stream().filter(g -> !g.name().equals(Grid.BASE) && !g.name().equals(Grid.POLICY)).forEach(g -> factors.add(rows(g, dimension, word)));
        }

        private static List<Row> rows(Grid grid, String dimension, String word) {
            List<String> words = grid.columns().stream().map(c -> c.name().equals(dimension) ? word
                    : USUAL.getOrDefault(c.name(), c.choices().isEmpty() ? "" : c.choices().get(0))).toList();
            List<Row> rows = new ArrayList<>();
            for (GridRow row : grid.rows()) {
                Optional<NumberInterval> heights = row.heights().interval();
                if (heights.isPresent() && row.choices().size() == words.size() && !row.results().isEmpty() && SheetCheck.answers(grid, row, words)) {
                    rows.add(new Row(heights.get(), NumberText.plain(row.results().get(0)), row));
                }
            }
            return rows;
        }

        double value(BigDecimal feet) {
            double value = bySurface ? answer(base, feet) : lifted(feet);
            for (List<Row> factor : factors) {
                value *= answer(factor, feet);
            }
            return bySurface || Double.isNaN(value) ? value : rounded(value, feet);
        }

        /** As sizing reckons it: never less than the same tree cut down to the foot of a row below would take. */
        private double lifted(BigDecimal feet) {
            double plain = answer(base, feet);
            if (Double.isNaN(plain)) {
                return plain;
            }
            Length height = Length.ofFeet(feet.doubleValue());
            Tree tree = new Tree(height, Tree.usualDiameter(height, fullness), fullness, SeenFrom.WALL, false, false);
            boolean girth = policy(feet).filter(r -> r.written().results().size() > 2 && r.written().results().get(2).equals("true")).isPresent();
            BigDecimal lowest = BigDecimal.valueOf(new Length(tree.widestDiameter().metres() / Tree.WIDEST).feet()).setScale(6, RoundingMode.HALF_UP);
            double value = plain * (girth ? Girth.of(tree) : 1);
            for (Row row : base) {
                BigDecimal foot = row.heights().from().max(lowest);
                double there = foot.compareTo(feet) < 0 && row.heights().contains(foot) ? answer(base, foot) : Double.NaN;
                if (!Double.isNaN(there)) {
                    value = Math.max(value, there * (girth ? Girth.of(tree.withHeight(Length.ofFeet(foot.doubleValue()))) : 1));
                }
            }
            return value;
        }

        private Optional<Row> policy(BigDecimal feet) {
            return policy.stream().filter(r -> r.heights().contains(feet)).findFirst();
        }

        private double rounded(double value, BigDecimal feet) {
            Optional<GridRow> row = policy(feet).map(Row::written).filter(r -> r.results().size() > 1);
            if (row.isEmpty()) {
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

        /** Of the only row that answers; no number when there is none, when there are several, or when its cell is none. */
        private static double answer(List<Row> rows, BigDecimal feet) {
            Row found = null;
            for (Row row : rows) {
                boolean about = row.heights().contains(feet);
                if (about && found != null) {
                    return Double.NaN;
                }
                found = about ? row : found;
            }
            return found == null || found.amount().isEmpty() ? Double.NaN : found.at(feet);
        }
    }
}
