package boughwright.house;

import boughwright.brief.Brief;
import boughwright.brief.BriefReader;
import boughwright.brief.BriefReading;
import boughwright.needs.Adjustments;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.rulebook.Rulebook;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A tree that the house knows well, with the quantities that every edition must give for it.
 *
 * @param title by which staff know it
 * @param brief JSON of the brief
 * @param expected quantities by the need's id; may be empty, for a brief that is only rehearsed
 */
public record ReferenceBrief(String title, String brief, SortedMap<String, Integer> expected) {

    public ReferenceBrief {
        expected = Collections.unmodifiableSortedMap(new TreeMap<>(expected));
    }

    /** What the edition gives otherwise than expected, in sentences; empty when all is as expected. */
    public List<String> broken(Rulebook rulebook) {
        BriefReading reading = new BriefReader(rulebook.choices()).read(brief);
        if (reading instanceof BriefReading.Faulty faulty) {
            return List.of(Text.of("house.reference.unread", title, faulty.faults().get(0).sentence()));
        }
        Brief read = ((BriefReading.Read) reading).brief();
        Needs needs = rulebook.needs(read, Adjustments.NONE);
        List<String> broken = new ArrayList<>();
        expected.forEach((id, quantity) -> {
            Optional<Need> need = needs.need(id);
            if (need.isEmpty()) {
                broken.add(Text.of("house.reference.gone", title, id));
            } else if (need.get().quantity() != quantity) {
                broken.add(Text.of("house.reference.other", title, NeedName.of(need.get()), String.valueOf(quantity), String.valueOf(need.get().quantity())));
            }
        });
        return broken;
    }
}
