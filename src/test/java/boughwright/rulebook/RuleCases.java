package boughwright.rulebook;

import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.brief.Household;
import boughwright.brief.Look;
import boughwright.brief.Room;
import boughwright.brief.Tree;
import boughwright.measure.Length;
import boughwright.needs.Climb;
import boughwright.needs.Density;
import boughwright.needs.TopperReach;
import boughwright.needs.LightLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** For each rule of the shipped rulebook facts over which it fires and facts, as near to them as may be, over which it does not. */
final class RuleCases {

    /**
     * @param fires facts over which the rule concludes something
     * @param silent facts over which it does not
     */
    record Case(String id, List<?> fires, List<?> silent) {

        @Override
        public String toString() {
            return id;
        }
    }

    private static final Room BARE_ROOM = new Room(Optional.empty(), false);

    private RuleCases() {
    }

    static List<Case> all() {
        List<Case> cases = new ArrayList<>();
        cases.add(new Case("S-01", List.of(tree("8 ft")), List.of(tree("7 ft 11 in"))));
        cases.add(new Case("S-02", List.of(tree("7 ft 11 in")), List.of(tree("8 ft"))));
        cases.add(new Case("S-12", List.of(Abundance.GENEROUS), List.of(Abundance.RESTRAINED)));
        cases.add(new Case("S-17", List.of(tree("4 ft")), List.of(tree("5 ft"))));
        cases.add(new Case("S-15", List.of(new Density(113, 10)), List.of(new Density(112, 10))));
        cases.add(new Case("S-24", List.of(tree("5 ft")), List.of(tree("4 ft 11 in"))));
        cases.add(new Case("S-25", List.of(tree("4 ft 11 in")), List.of(tree("5 ft"))));
        // What holds for any tree and any palette stays silent only where there is none.
        for (String id : List.of("S-03", "S-04", "S-10", "S-11", "S-13", "S-14", "S-16", "S-18", "S-20", "S-21", "S-22", "S-23", "S-26", "S-27", "S-28", "C-13")) {
            cases.add(new Case(id, List.of(tree("9 ft")), List.of(palette(), BARE_ROOM)));
        }
        for (String id : List.of("S-30", "S-31", "S-32", "S-33", "S-34", "S-35", "S-36")) {
            cases.add(new Case(id, List.of(palette()), List.of(tree("9 ft"), BARE_ROOM)));
        }
        cases.add(new Case("S-40", List.of(look("woodland")), List.of(look("frost-fair"))));
        cases.add(new Case("S-41", List.of(look("frost-fair")), List.of(look("orchard-supper"))));
        cases.add(new Case("S-42", List.of(look("orchard-supper")), List.of(look("gilded-library"))));
        cases.add(new Case("S-43", List.of(look("gilded-library")), List.of(look("harbour-light"))));
        cases.add(new Case("S-44", List.of(look("harbour-light")), List.of(look("woodland"))));

        cases.add(new Case("C-01", List.of(new Household(true, false)), List.of(new Household(false, true))));
        cases.add(new Case("C-02", List.of(new Household(false, true)), List.of(new Household(true, false))));
        cases.add(new Case("C-10", List.of(new LightLoad(9, 40.8, 5)), List.of(new LightLoad(9, 40.8, 0))));
        cases.add(new Case("C-11", List.of(new LightLoad(36, 40.8, 5)), List.of(new LightLoad(35, 40.8, 5))));
        cases.add(new Case("C-12", List.of(tree("9 ft", "lit=true")), List.of(tree("9 ft"))));
        cases.add(new Case("C-20", List.of(new Room(Optional.empty(), true)), List.of(BARE_ROOM)));
        cases.add(new Case("C-21", List.of(tree("9 ft", "real=true")), List.of(tree("9 ft"))));
        cases.add(new Case("C-22", List.of(tree("9 ft")), List.of(tree("9 ft", "real=true"))));
        cases.add(new Case("C-30", List.of(new Climb(2.3, 4, false)), List.of(new Climb(2.0, 0, false))));
        cases.add(new Case("C-31", List.of(new Climb(5.2, 0, true)), List.of(new Climb(4.9, 12, false))));
        cases.add(new Case("C-32", List.of(tree("7 ft 6 in")), List.of(tree("7 ft 5 in"))));
        cases.add(new Case("C-35", List.of(new TopperReach(2.95), room("10 ft")), List.of(new TopperReach(2.85), room("10 ft"))));
        cases.add(new Case("C-33", List.of(tree("9 ft"), room("9 ft 5 in")), List.of(tree("9 ft"), room("9 ft 7 in"))));
        cases.add(new Case("C-34", List.of(tree("12 ft 1 in")), List.of(tree("12 ft"))));
        return cases;
    }

    static Tree tree(String height, String... fields) {
        return RulebookFixture.brief(height, fields).tree();
    }

    static Room room(String ceiling) {
        return new Room(Length.read(ceiling), false);
    }

    private static Object palette() {
        return RulebookFixture.brief("9 ft").palette();
    }

    private static Look look(String id) {
        Brief brief = RulebookFixture.briefWith("9 ft", List.of(), "\"look\": \"" + id + "\"");
        return brief.look();
    }
}
