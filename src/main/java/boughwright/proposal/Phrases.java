package boughwright.proposal;

import boughwright.brief.Brief;
import boughwright.text.Text;
import java.util.List;

/** Phrases that screen and print share. */
public final class Phrases {

    private Phrases() {
    }

    /** A Woodland tree of 9 ft; an Orchard Supper tree of 2.3 m. */
    public static String title(Brief brief) {
        String look = brief.look().shownTitle();
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

    /** With a capital letter. */
    public static String sentence(String words) {
        return Text.sentence(words);
    }

    /** a; a and b; a, b and c. */
    public static String list(List<String> parts) {
        return Text.list(parts);
    }
}
