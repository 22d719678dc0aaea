package boughwright.ui;

import boughwright.brief.Word;
import boughwright.colour.Deficiency;
import boughwright.colour.Sight;
import boughwright.colour.WarmLight;
import boughwright.drawing.SightFilters;
import boughwright.text.Text;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Ways in which the drawing of the tree can be looked at. */
enum Preview implements Word {

    AS_IT_IS(null), WITHOUT_RED(Deficiency.PROTANOPIA), WITHOUT_GREEN(Deficiency.DEUTERANOPIA), WITHOUT_BLUE(Deficiency.TRITANOPIA), LAMP(WarmLight.LAMP),
    CANDLE(WarmLight.CANDLE);

    private final Sight sight;

    Preview(Sight sight) {
        this.sight = sight;
    }

    /** Empty for the drawing as it is. */
    Optional<Sight> sight() {
        return Optional.ofNullable(sight);
    }

    /** Empty for the drawing as it is and for lights. */
    Optional<Deficiency> deficiency() {
        return sight instanceof Deficiency deficiency ? Optional.of(deficiency) : Optional.empty();
    }

    /** In a word or two, for a button. */
    String button() {
        return Text.of("sight." + word());
    }

    /** As a title, with the medical word or the temperature of the lamp. */
    String title() {
        return Text.of("sight." + word() + ".title");
    }

    /** What to look at. */
    String mind() {
        return sight instanceof WarmLight light ? Text.of("sight." + word() + ".mind", String.valueOf(Math.round(100 * light.adaptation())))
                : Text.of("sight." + word() + ".mind");
    }

    /** The class under which the style sheet applies the filter of the same name. */
    String className() {
        return "seen-" + word();
    }

    /** The filters of all previews, to stand once on a page. */
    static String filters() {
        Map<String, Sight> sights = new LinkedHashMap<>();
        for (Preview preview : values()) {
            preview.sight().ifPresent(sight -> sights.put(preview.className(), sight));
        }
        return SightFilters.svg(sights);
    }
}
