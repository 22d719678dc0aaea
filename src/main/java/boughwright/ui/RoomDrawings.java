package boughwright.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Trees in their rooms that were drawn lately, for all tablets: most customers answer by the same cards. Safe for several threads. */
final class RoomDrawings {

    private static final int MOST = 48;

    private final Map<List<Object>, String> drawn = new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Object>, String> eldest) {
            return size() > MOST;
        }
    };

    /** @param shows all that decides how it looks */
    synchronized String of(List<Object> shows, Supplier<String> drawing) {
        String known = drawn.get(shows);
        if (known == null) {
            known = drawing.get();
            drawn.put(shows, known);
        }
        return known;
    }
}
