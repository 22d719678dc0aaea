package boughwright.photo;

import boughwright.catalogue.Traits.Finish;
import boughwright.colour.Srgb;
import boughwright.text.Text;
import java.util.Optional;

/**
 * What a product's finish looks like in its photo. A suggestion: light decides as much as the finish does.
 *
 * @param finish matte, satin, shiny, metallic or glitter
 * @param highlight colour of the light that it throws back; empty where none was seen
 * @param highlightShare of the product, [0, 1]; 0 where none was seen
 */
public record FinishHint(Finish finish, Optional<Srgb> highlight, double highlightShare) {

    /** Why, in one sentence. */
    public String reason() {
        return Text.of("photo.finish." + finish.word());
    }
}
