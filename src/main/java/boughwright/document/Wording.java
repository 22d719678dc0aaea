package boughwright.document;

import boughwright.brief.Brief;
import boughwright.measure.Length;
import boughwright.measure.Units;
import boughwright.needs.Role;
import boughwright.proposal.Phrases;
import boughwright.text.Text;

/** Words and figures that several pages share. */
final class Wording {

    /** Between two words that belong together. */
    static final char HARD_SPACE = '\u00a0';

    private Wording() {
    }

    /** A Woodland tree of 9 ft. */
    static String title(Brief brief) {
        String height = brief.tree().height().show(brief.units());
        return Phrases.title(brief).replace(height, bound(height));
    }

    static String length(double metres, Units units) {
        return length(new Length(metres), units);
    }

    static String length(Length length, Units units) {
        return bound(length.show(units));
    }

    /** The text in one piece, that no line end may part. */
    static String bound(String text) {
        return text.replace(' ', HARD_SPACE);
    }

    /** As programs read it: every space an ordinary one. */
    static String unbound(String text) {
        return text.replace(HARD_SPACE, ' ');
    }

    static String duration(int minutes) {
        return bound(Phrases.duration(minutes));
    }

    /** 3 rolls, 1 stem. */
    static String count(int quantity, Role role) {
        String unit = role == Role.LIGHT_STRING ? "string" : role.ribbon() ? "roll" : role.stem() ? "stem" : "piece";
        return quantity + String.valueOf(HARD_SPACE) + Text.of("unit." + unit, quantity);
    }
}
