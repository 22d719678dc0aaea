package boughwright.proposal;

import boughwright.brief.Brief;
import boughwright.text.Text;

/** Phrases that screen and print share. */
public final class Phrases {

    private Phrases() {
    }

    /** A Woodland tree of 9 ft; an Orchard Supper tree of 2.3 m. */
    public static String title(Brief brief) {
        String look = brief.look().title();
        boolean vowel = !look.isEmpty() && "AEIOaeio".indexOf(look.charAt(0)) >= 0;
        return Text.of(vowel ? "proposal.title.an" : "proposal.title.a", look, brief.tree().height().show(brief.units()));
    }

    /** 45 min, 2 h, 5 h 1 min. */
    public static String duration(int minutes) {
        if (minutes < 60) {
            return Text.of("duration.minutes", minutes);
        }
        return minutes % 60 == 0 ? Text.of("duration.hours", minutes / 60) : Text.of("duration.hours.minutes", minutes / 60, minutes % 60);
    }
}
