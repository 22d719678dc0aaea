package boughwright.kit;

import boughwright.needs.Need;
import boughwright.needs.Role;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A place in the kit that one product fills: one need, or several that share a product, as the stems of topper and clusters do.
 *
 * @param needs at least one, all of one role and unit
 */
record Slot(String id, Role role, List<Need> needs) {

    int quantity() {
        return needs.stream().mapToInt(Need::quantity).sum();
    }

    Need first() {
        return needs.get(0);
    }

    /** The slots of all bought needs, in the order in which the needs come. */
    static List<Slot> of(List<Need> bought) {
        Map<String, List<Need>> bySlot = new LinkedHashMap<>();
        bought.forEach(n -> bySlot.computeIfAbsent(n.slot(), s -> new ArrayList<>()).add(n));
        return bySlot.entrySet().stream().map(e -> new Slot(e.getKey(), e.getValue().get(0).role(), List.copyOf(e.getValue()))).toList();
    }
}
