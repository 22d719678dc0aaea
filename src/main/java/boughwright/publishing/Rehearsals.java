package boughwright.publishing;

import boughwright.house.Rehearsal;
import boughwright.rulebook.Rulebook;
import org.springframework.stereotype.Component;

/** Rehearsals of drafts against what is live; what was worked out for the live edition is remembered until another goes live. */
@Component
public class Rehearsals {

    private final ShopDoor shop;
    private Rehearsal.Memory memory;

    Rehearsals(ShopDoor shop) {
        this.shop = shop;
    }

    /** @param whole with kits and layouts, not only by needs */
    public synchronized Rehearsal of(Rulebook draft, boolean whole) {
        if (memory == null || memory.live() != shop.designer()) {
            memory = new Rehearsal.Memory(shop.designer());
        }
        return new Rehearsal(memory, shop.trying(draft), whole);
    }
}
