package boughwright.house;

import java.util.List;

/**
 * A column that a row gives.
 *
 * @param choices the words that there are; empty unless it is a word
 */
public record Result(String name, Kind kind, List<String> choices) {

    public enum Kind { NUMBER, WORD, YES_OR_NO }

    public Result {
        choices = List.copyOf(choices);
    }
}
