package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.rulebook.Rulebook;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TradeFactsTest {

    private static List<String> broken(HouseRules rules) throws IOException {
        Map<String, String> texts = EditionTexts.of(rules, "draft", "Draft", HouseFixture.rulebook().edition());
        Rulebook.Opening opening = Rulebook.open(texts::get, KioskFixture.designer().rulebook().styleRules());
        return TradeFacts.broken(((Rulebook.Opening.Open) opening).rulebook());
    }

    private static HouseRules with(String topic, String grid, int row, String number) {
        return HouseFixture.shipped().changeGrid(topic, grid, g -> g.change(row, r -> r.withResult(0, number)));
    }

    @Test
    void the_shipped_rules_keep_to_all_of_them() throws IOException {
        assertThat(broken(HouseFixture.shipped())).isEmpty();
    }

    @Test
    void a_number_off_usual_practice_is_told_with_what_is_usual() throws IOException {
        assertThat(broken(with("topper-groupings", "Base", 2, "4"))).anySatisfy(s -> assertThat(s).contains("9 ft").contains("gets 4").contains("usual practice is 3"));
        assertThat(broken(with("sprays", "Base", 6, "12"))).anySatisfy(s -> assertThat(s).contains("gets 12").contains("usual practice is 9"));
    }

    @Test
    void a_quantity_that_falls_as_trees_are_fuller_or_seen_from_more_sides_is_told() throws IOException {
        assertThat(broken(with("single-flowers", "Seen-from factor", 2, "0.3"))).anySatisfy(s -> assertThat(s).contains("fall to").contains("In a bay"));
        assertThat(broken(with("clusters", "Fullness factor", 2, "0.8"))).anySatisfy(s -> assertThat(s).contains("fall to").contains("Full"));
    }
}
