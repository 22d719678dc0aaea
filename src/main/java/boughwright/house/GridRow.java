package boughwright.house;

import java.util.ArrayList;
import java.util.List;

/**
 * One row, each cell as somebody has typed it.
 *
 * @param choices for each column the words that the row is about; an empty list means any
 * @param results one for each result column
 * @param growing whether the first result holds at the lowest of the heights and grows with the surface beyond
 * @param reason the sentence for the customer
 */
public record GridRow(Heights heights, List<List<String>> choices, List<String> results, boolean growing, String reason) {

    public GridRow {
        choices = choices.stream().map(List::copyOf).toList();
        results = results.stream().map(String::strip).toList();
        reason = reason.strip();
    }

    public GridRow withHeights(Heights other) {
        return new GridRow(other, choices, results, growing, reason);
    }

    public GridRow withChoice(int column, List<String> words) {
        List<List<String>> changed = new ArrayList<>(choices);
        changed.set(column, words);
        return new GridRow(heights, changed, results, growing, reason);
    }

    public GridRow withResult(int column, String text) {
        List<String> changed = new ArrayList<>(results);
        changed.set(column, text);
        return new GridRow(heights, choices, changed, growing, reason);
    }

    public GridRow withGrowing(boolean other) {
        return new GridRow(heights, choices, results, other, reason);
    }

    public GridRow withReason(String other) {
        return new GridRow(heights, choices, results, growing, other);
    }
}
