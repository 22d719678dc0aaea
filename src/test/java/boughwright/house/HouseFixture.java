package boughwright.house;

import boughwright.measure.Units;
import boughwright.rulebook.Rulebook;
import boughwright.rulebook.RulebookFixture;
import java.util.List;

/** The house rules of the rulebook as shipped. */
public final class HouseFixture {

    private HouseFixture() {
    }

    private static final class Opened {
        static final HouseRules RULES = ((EditionTexts.Reading.Read) EditionTexts.read(RulebookFixture.shipped().edition(), RulebookFixture.texts())).rules();
    }

    public static HouseRules shipped() {
        return Opened.RULES;
    }

    static Rulebook rulebook() {
        return RulebookFixture.shipped();
    }

    static List<Complaint> complaints(HouseRules rules) {
        return new HouseCheck(Units.FEET).of(rules);
    }
}
