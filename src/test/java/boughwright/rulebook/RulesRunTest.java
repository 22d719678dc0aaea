package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.brief.Fullness;
import boughwright.brief.Household;
import boughwright.brief.Room;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.measure.Length;
import boughwright.needs.Advice;
import boughwright.needs.Demand;
import boughwright.needs.Dimension;
import boughwright.needs.Role;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RulesRunTest {

    private static final StyleRules RULES = ((DrlCompilation.Sound) new DrlCompiler().compile(SampleTexts.RULES)).rules();
    // Two households with pets: the same conclusion is drawn twice.
    private static final List<?> FACTS = List.of(tree(Fullness.FULL, SeenFrom.ROUND, true), new Room(Optional.of(Length.ofFeet(8.25)), true),
            new Household(false, true), new Household(true, true));

    @Test
    void each_finding_carries_the_rule_that_made_it() {
        assertThat(RULES.run(FACTS, Demand.class)).extracting(finding -> finding.rule().id()).containsExactly("S-01", "S-03");
        assertThat(RULES.run(FACTS, Demand.class).get(1).fact()).isEqualTo(new Demand.Within(Role.BASE_RIBBON, Dimension.WIDTH, 0.06, 0.12));
        assertThat(RULES.run(FACTS, Advice.class)).extracting(finding -> finding.rule().id()).containsExactly("C-01", "C-02", "C-03");
    }

    @Test
    void a_rule_that_concludes_the_same_twice_is_listed_once() {
        assertThat(RULES.run(FACTS, Advice.class)).filteredOn(finding -> finding.rule().id().equals("C-01")).hasSize(1);
    }

    @Test
    void rules_whose_conditions_fail_find_nothing() {
        List<?> plain = List.of(tree(Fullness.MEDIUM, SeenFrom.WALL, false), new Room(Optional.of(Length.ofFeet(9)), true), new Household(true, false));
        assertThat(RULES.run(plain, Object.class)).isEmpty();
    }

    @Test
    void the_findings_do_not_depend_on_the_order_of_the_facts() {
        List<Finding<Object>> expected = RULES.run(FACTS, Object.class);
        List<Object> shuffled = new ArrayList<>(FACTS);
        Random random = new Random(7);
        for (int i = 0; i < 50; i++) {
            Collections.shuffle(shuffled, random);
            assertThat(RULES.run(shuffled, Object.class)).isEqualTo(expected);
        }
    }

    @Test
    void many_threads_may_run_the_rules_at_once() {
        List<Finding<Object>> expected = RULES.run(FACTS, Object.class);
        assertThat(IntStream.range(0, 500).parallel().allMatch(i -> RULES.run(FACTS, Object.class).equals(expected))).isTrue();
    }

    @Test
    void rules_that_feed_each_other_for_ever_are_given_up() {
        String endless = """
                package boughwright.rules;
                import boughwright.needs.Density;
                rule "X-01: Every stem leads to another"
                when
                    Density( $stems : stems )
                then
                    insert( new Density($stems + 1, 9.0) );
                end
                """;
        StyleRules rules = ((DrlCompilation.Sound) new DrlCompiler().compile(Map.of("x.drl", endless))).rules();
        assertThatThrownBy(() -> rules.run(List.of(new boughwright.needs.Density(1, 9)), Advice.class))
                .isInstanceOf(IllegalStateException.class).hasMessageContaining("10000 firings");
    }

    private static Tree tree(Fullness fullness, SeenFrom seenFrom, boolean real) {
        Length height = Length.ofFeet(8);
        return new Tree(height, Tree.usualDiameter(height, fullness), fullness, seenFrom, false, real);
    }
}
