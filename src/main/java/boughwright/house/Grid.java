package boughwright.house;

import boughwright.rulebook.Asked;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * One decision table as staff see it.
 *
 * @param name such as {@code Base}
 * @param byHeight whether rows are chosen by height, too
 */
public record Grid(String name, boolean byHeight, List<Column> columns, List<Result> results, List<GridRow> rows) {

    /** The table that gives the number for a tree; the others of a sheet multiply it or say how it is rounded. */
    public static final String BASE = Asked.BASE;
    public static final String POLICY = Asked.POLICY;

    public Grid {
        columns = List.copyOf(columns);
        results = List.copyOf(results);
        rows = List.copyOf(rows);
    }

    private Grid withRows(List<GridRow> other) {
        return new Grid(name, byHeight, columns, results, other);
    }

    /** @param row counted from 0, as in all that follow */
    public Grid change(int row, UnaryOperator<GridRow> change) {
        List<GridRow> changed = new ArrayList<>(rows);
        changed.set(row, change.apply(rows.get(row)));
        return withRows(changed);
    }

    /** A row with nothing in it yet, below {@code row}; at the top for −1. */
    public Grid add(int row) {
        List<GridRow> changed = new ArrayList<>(rows);
        Heights heights = byHeight && row >= 0 && !rows.get(row).heights().any()
                ? new Heights(rows.get(row).heights().to(), rows.get(row).heights().upTo(), "", false) : Heights.ANY;
        changed.add(row + 1, new GridRow(heights, Collections.nCopies(columns.size(), List.of()), Collections.nCopies(results.size(), ""), false,
                row >= 0 ? rows.get(row).reason() : ""));
        return withRows(changed);
    }

    public Grid copy(int row) {
        List<GridRow> changed = new ArrayList<>(rows);
        changed.add(row + 1, rows.get(row));
        return withRows(changed);
    }

    public Grid delete(int row) {
        List<GridRow> changed = new ArrayList<>(rows);
        changed.remove(row);
        return withRows(changed);
    }

    /** Moves a row up or down among the others; nothing happens at either end. The order is for the eye alone. */
    public Grid move(int row, int by) {
        int to = row + by;
        if (to < 0 || to >= rows.size()) {
            return this;
        }
        List<GridRow> changed = new ArrayList<>(rows);
        Collections.swap(changed, row, to);
        return withRows(changed);
    }
}
