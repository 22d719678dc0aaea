package boughwright.document;

import boughwright.brief.Brief;
import boughwright.measure.Length;
import boughwright.measure.Units;
import boughwright.needs.Role;
import boughwright.text.Text;

/** Words and figures that several pages share. */
final class Wording {

    /** Between two words that belong together. */
    static final char HARD_SPACE = '\u00a0';

    private Wording() {
    }

    /** A Woodland tree of 9 ft. */
    static String title(Brief brief) {
        String look = brief.look().title();
        boolean vowel = !look.isEmpty() && "AEIOaeio".indexOf(look.charAt(0)) >= 0;
        return Text.of(vowel ? "document.title.an" : "document.title.a", look, length(brief.tree().height(), brief.units()));
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
        if (minutes < 60) {
            return bound(Text.of("document.minutes", String.valueOf(minutes)));
        }
        String hours = String.valueOf(minutes / 60);
        return bound(minutes % 60 == 0 ? Text.of("document.hours", hours)
                : Text.of("document.hours.minutes", hours, String.valueOf(minutes % 60)));
    }

    /** 3 rolls, 1 stem. */
    static String count(int quantity, Role role) {
        String unit = role == Role.LIGHT_STRING ? "string" : role.ribbon() ? "roll" : role.stem() ? "stem" : "piece";
        return quantity + String.valueOf(HARD_SPACE) + Text.of("unit." + unit, quantity);
    }
}
