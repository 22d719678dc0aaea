package boughwright.intake;

import boughwright.catalogue.CatalogueRows;
import java.util.ArrayList;
import java.util.List;

/** A good ball as the one line of a file, to be spoiled. */
final class CsvLines {

    private static final List<String> BALL = List.of("BL-1", "6291041500213", "Silver bauble", "filler-ball", "silver", "#bcbec2", "", "smooth",
            "satin", "shatterproof", "ball", "", "", "60", "", "", "", "", "12", "17.75", "USD", "fine", "54", "B1-2", "frost-fair", "", "Larkspur");

    private CsvLines() {
    }

    static List<String> ball(String column, String value) {
        List<String> cells = new ArrayList<>(BALL);
        cells.set(CatalogueRows.COLUMNS.indexOf(column), value);
        return cells;
    }

    static String withWidth(String heading, String width) {
        return String.join(",", CatalogueRows.COLUMNS).replace("width_mm", heading) + "\n" + String.join(",", ball("width_mm", width)) + "\n";
    }
}
