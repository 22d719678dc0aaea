package boughwright.house;

import boughwright.text.Text;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What tables and columns are called where staff see them, and in what they are told about them. */
public final class Headings {

    private Headings() {
    }

    /** A column of somebody's own, as an imported file may have one, is called what it is called there. */
    public static String column(String column) {
        return Text.or("house.column." + column.replace(' ', '-'), column);
    }

    /** What is counted, for a quantity; else what the column does. */
    public static String result(Sheet sheet, Grid grid, Result result) {
        return switch (grid.name()) {
            case Grid.BASE -> Text.or("house.counted." + sheet.topic(), Text.of("house.column.number"));
            case Grid.POLICY -> column(result.name());
            default -> Text.of("house.column.times");
        };
    }

    public static String grid(String grid) {
        return Text.or("house.grid." + grid.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-"), grid);
    }

    /**
     * Where something stands, in words: {@code Rolls of body ribbon, By height, row 4, Rolls}.
     *
     * @param row from 1; 0 for none
     * @param title any of these may be empty, as may {@code table} and {@code column}
     */
    public static String where(String title, String table, int row, String column) {
        return Stream.of(title, table, row == 0 ? "" : Text.of("house.row", String.valueOf(row)), column).filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
    }
}
