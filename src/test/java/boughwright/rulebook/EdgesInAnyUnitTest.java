package boughwright.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.Brief;
import boughwright.needs.Climb;
import boughwright.needs.Demand;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EdgesInAnyUnitTest {

    @ParameterizedTest
    @ValueSource(ints = {60, 90, 96, 108, 144})
    void the_same_tree_is_under_the_same_rules_in_whatever_unit_it_was_measured(int inches) {
        Brief feet = RulebookFixture.brief(inches / 12.0 + " ft");
        for (String height : List.of(inches + " in", String.format(Locale.ROOT, "%.2f cm", inches * 2.54), String.format(Locale.ROOT, "%.4f m", inches * 0.0254))) {
            assertThat(RulebookFixture.needs(RulebookFixture.brief(height)).demands(Demand.class)).as(height)
                    .isEqualTo(RulebookFixture.needs(feet).demands(Demand.class));
        }
    }

    @Test
    void six_inches_under_the_ceiling_are_enough_whatever_the_height() {
        for (int inches = 42; inches <= 240; inches++) {
            Brief brief = RulebookFixture.briefWith(inches + " in", List.of(), "\"room\": {\"ceiling\": \"" + (inches + 6) + " in\"}");
            assertThat(RulebookFixture.shipped().cautions(brief, RulebookFixture.needs(brief), new Climb(2, 0, false), Optional.empty(), Optional.empty()))
                    .as("%d in", inches).noneMatch(caution -> caution.id().equals("C-33"));
        }
    }
}
