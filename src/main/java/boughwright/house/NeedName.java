package boughwright.house;

import boughwright.needs.Need;
import boughwright.text.Text;

/** What a need is called where staff read it. */
public final class NeedName {

    private NeedName() {
    }

    /** {@code Spray, 2nd style} or {@code Filler ball, 80 mm}. */
    public static String of(Need need) {
        String role = Text.of("role." + need.role().word());
        if (need.diameter().isPresent()) {
            return Text.of("house.need.sized", role, String.valueOf(Math.round(need.diameter().get().millimetres())));
        }
        return need.id().matches(".*/\\d+") ? Text.of("house.need.style", role, String.valueOf(need.style())) : role;
    }
}
