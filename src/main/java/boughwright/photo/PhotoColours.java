package boughwright.photo;

import java.util.List;
import java.util.Optional;

/**
 * The dominant colours of a picture.
 *
 * @param colours the largest share first, shares adding up to 1; fewer than asked for where the picture has fewer
 * @param finish of a product whose background was set aside; empty for a room
 * @param setAside share of the picture that was background or transparent, [0, 1)
 */
public record PhotoColours(List<PhotoColour> colours, Optional<FinishHint> finish, double setAside) {

    public PhotoColours {
        colours = List.copyOf(colours);
    }
}
