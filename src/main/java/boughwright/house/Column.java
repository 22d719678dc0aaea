package boughwright.house;

import java.util.List;

/**
 * A column of words that choose a row.
 *
 * @param name such as {@code seen from}
 * @param choices the words that there are, in the order in which quantities should rise
 */
public record Column(String name, List<String> choices) {

    public Column {
        choices = List.copyOf(choices);
    }
}
