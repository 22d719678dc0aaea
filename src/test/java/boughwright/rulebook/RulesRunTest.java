package boughwright.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boughwright.brief.Fullness;
import boughwright.brief.Pet;
import boughwright.brief.Room;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.needs.Caution;
import boughwright.needs.StyleWish;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RulesRunTest {

    private static final StyleRules RULES =
            assertInstanceOf(DrlCompilation.Sound.class, new DrlCompiler().compile(ShippedTexts.of(".drl"))).rules();
    private static final List<?> FACTS = List.of(new Tree(2.4, Fullness.FULL, SeenFrom.ROUND, true), new Room(2.5, 0.5), new Pet("cat"),
            new Pet("cat"), new Pet("dog"));

    @Test
    void each_finding_carries_the_rule_that_made_it() {
        assertEquals(List.of("S-01", "S-03"), RULES.run(FACTS, StyleWish.class).stream().map(finding -> finding.rule().id()).toList());
        assertEquals(new StyleWish("ribbon", 1.2), RULES.run(FACTS, StyleWish.class).get(1).fact());
        assertEquals(List.of("tinsel", "topper", "heat"), RULES.run(FACTS, Caution.class).stream().map(finding -> finding.fact().topic()).toList());
    }

    @Test
    void a_rule_that_concludes_the_same_twice_is_listed_once() {
        assertEquals(1, RULES.run(FACTS, Caution.class).stream().filter(finding -> finding.rule().id().equals("C-01")).count());
    }

    @Test
    void rules_whose_conditions_fail_find_nothing() {
        var plain = List.of(new Tree(1.8, Fullness.MEDIUM, SeenFrom.WALL, false), new Room(2.6, 3), new Pet("dog"));
        assertTrue(RULES.run(plain, Object.class).isEmpty());
    }

    @Test
    void the_findings_do_not_depend_on_the_order_of_the_facts() {
        var expected = RULES.run(FACTS, Object.class);
        var shuffled = new ArrayList<Object>(FACTS);
        var random = new Random(7);
        for (int i = 0; i < 50; i++) {
            Collections.shuffle(shuffled, random);
            assertEquals(expected, RULES.run(shuffled, Object.class));
        }
    }

    @Test
    void many_threads_may_run_the_rules_at_once() {
        var expected = RULES.run(FACTS, Object.class);
        assertTrue(java.util.stream.IntStream.range(0, 500).parallel().allMatch(i -> RULES.run(FACTS, Object.class).equals(expected)));
    }

    @Test
    void rules_that_feed_each_other_for_ever_are_given_up() {
        var endless = """
                package boughwright.rules;
                import boughwright.brief.Room;
                rule "X-01: Every room leads to another"
                when
                    Room( $c : ceiling )
                then
                    insert( new Room($c + 1, 1) );
                end
                """;
        var rules = assertInstanceOf(DrlCompilation.Sound.class, new DrlCompiler().compile(Map.of("x.drl", endless))).rules();
        assertThrows(IllegalStateException.class, () -> rules.run(List.of(new Room(2, 1)), Room.class));
    }
}
