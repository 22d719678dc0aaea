package boughwright.people;

import java.util.Optional;

/**
 * Where somebody tries to sign in.
 *
 * @param tablet that is enrolled
 * @param address from which the request came
 */
public record Place(Optional<Tablet> tablet, String address) {

    /** What wrong tries from here are counted under. */
    String subject() {
        return tablet.map(t -> "tablet " + t.id()).orElse(address);
    }
}
