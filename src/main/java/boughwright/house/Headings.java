package boughwright.house;

import boughwright.text.Text;
import java.util.Locale;

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
}
