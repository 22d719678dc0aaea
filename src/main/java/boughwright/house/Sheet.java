package boughwright.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * All tables of one quantity: one page for staff, one DMN file of an edition.
 *
 * @param topic names the file, such as {@code body-ribbon}
 * @param title such as "Rolls of body ribbon"
 * @param about what is counted, in what, and where the numbers come from
 */
public record Sheet(String topic, String title, String about, List<Grid> grids) {

    public static final String FOLDER = "sizing/";
    public static final String ENDING = ".dmn";

    public Sheet {
        grids = List.copyOf(grids);
    }

    public String file() {
        return FOLDER + topic + ENDING;
    }

    public Optional<Grid> grid(String name) {
        return grids.stream().filter(g -> g.name().equals(name)).findFirst();
    }

    public Sheet change(String grid, UnaryOperator<Grid> change) {
        List<Grid> changed = new ArrayList<>(grids);
        changed.replaceAll(g -> g.name().equals(grid) ? change.apply(g) : g);
        return new Sheet(topic, title, about, changed);
    }
}
