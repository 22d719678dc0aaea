package boughwright.kit;

import java.util.List;
import java.util.Set;

/** What the customer wishes, and what is asked of the shelf when only some of it holds. */
public interface Wishes {

    /** In the customer's order of importance, the most important first. */
    List<Wish> inOrder();

    /**
     * What is asked when just these wishes hold. With fewer wishes whatever could be done before can still be done: none of them
     * makes room for another.
     */
    KitRequest holding(Set<Wish> held);

    /** As {@link #holding}, but for one of the wishes that is met in another way. */
    KitRequest holding(Set<Wish> held, Conflict.Step instead);

    /** The numbers of a wish for a quantity. */
    Range quantity(Wish quantity);

    /** @param computed what the rulebook gives, below {@code asked} */
    record Range(int computed, int asked) {
    }
}
