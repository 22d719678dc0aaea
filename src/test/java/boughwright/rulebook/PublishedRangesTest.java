package boughwright.rulebook;

import static boughwright.rulebook.RulebookFixture.brief;
import static boughwright.rulebook.RulebookFixture.needs;
import static boughwright.rulebook.RulebookFixture.quantity;
import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.Brief;
import boughwright.measure.Length;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A medium tree against a wall, dressed generously, beside what guides for decorators print. */
class PublishedRangesTest {

    /**
     * Where most guides to mini lights agree, by height: National Gardening Association, garden.org; H. Yoest, Gardening With
     * Confidence, 2009; Taste of Home; LifeTips; The Spruce as quoted by Litehouse; a store's table reprinted at behindthephoto.org.
     */
    @ParameterizedTest
    @CsvSource({"4, 200, 500", "5, 300, 500", "6, 400, 700", "6.5, 430, 700", "7, 465, 1050", "7.5, 700, 1000", "9, 900, 1300", "10, 1000, 1300", "12, 1200, 2000"})
    void bulbs_lie_where_most_guides_agree(String feet, int least, int most) {
        assertThat(quantity(brief(feet + " ft"), "lights/light-string")).isBetween(least, most);
    }

    /** TMI Gifts, "Christmas Tree Recipe": ten-yard rolls for a topper with streamers up to full-length streaming; the last row stands for 9 to 12 ft. */
    @ParameterizedTest
    @CsvSource({"6.5, 1, 3", "7.5, 2, 4", "9, 3, 5", "12, 3, 5"})
    void rolls_of_a_body_ribbon_lie_between_light_and_heavy(String feet, int least, int most) {
        assertThat(quantity(brief(feet + " ft"), "ribbon/base-ribbon")).isBetween(least, most);
    }

    /** City Lifestyle, "Recipes for Radiant Evergreens": 21 yd on 7 ft, 3 yd a foot. Events by Leigh: 21 yd of each of three on 6 to 7 ft, up to 10.5. */
    @ParameterizedTest
    @ValueSource(strings = {"5", "6", "6.5", "7", "7.5", "8", "9", "10", "11", "12"})
    void yards_of_all_ribbon_for_each_foot_lie_between_the_leanest_and_the_richest_recipe(String feet) {
        Needs needs = needs(brief(feet + " ft"));
        int rolls = needs.needs().stream().filter(need -> need.role().ribbon()).mapToInt(Need::quantity).sum();
        assertThat(10.0 * rolls / Double.parseDouble(feet)).isBetween(3.0, 10.5);
    }

    /** Events by Leigh 3.4 stems a foot; City Lifestyle 7.9; Waukesha Floral, "Christmas Tree Recipe", 84 on 7.5 ft, 11.2. */
    @ParameterizedTest
    @ValueSource(strings = {"5", "6", "6.5", "7", "7.5", "8", "9", "10", "11", "12"})
    void stems_for_each_foot_lie_between_the_leanest_and_the_richest_recipe(String feet) {
        int stems = needs(brief(feet + " ft")).bought().stream().filter(need -> need.role().stem()).mapToInt(Need::quantity).sum();
        assertThat(stems / Double.parseDouble(feet)).isBetween(3.4, 11.2);
    }

    /**
     * Guides that count large balls, as a share of the whole tree's surface at 4 in, the least they name: livelikeyouarerich.com;
     * Courtney Warren; Balsam Hill; David Christopher's; TMI Gifts. The lowest and the highest count among them at each height.
     */
    @ParameterizedTest
    @CsvSource({"5, 35, 75", "6, 35, 90", "6.5, 35, 100", "7, 70, 105", "7.5, 70, 135", "9, 90, 210", "10, 105, 210"})
    void ornaments_cover_what_guides_of_large_balls_cover(String feet, int fewest, int most) {
        Brief brief = brief(feet + " ft");
        assertThat(shareCovered(brief)).isBetween(share(brief, fewest, 4), share(brief, most, 4));
    }

    /**
     * Guides that count small balls, three times as many, at the least and greatest diameter they name: 40 a foot, Taste of Home, of
     * small balls of 1.25 to 3.25 in; Christmas Lights Etc as quoted by hollybellomy.com, 2014, 300 of 2 to 3.25 in on 7.5 ft, 450 of
     * 2.75 to 4 in from 9.5 to 12 ft. At 10 ft the latter would cover a fifth and more, above every other guide and above ours.
     */
    @ParameterizedTest
    @CsvSource({"4, 160, 1.25, 3.25", "5, 200, 1.25, 3.25", "6, 240, 1.25, 3.25", "7, 280, 1.25, 3.25", "7.5, 300, 2, 3.25", "9, 360, 1.25, 3.25",
        "10, 400, 1.25, 3.25", "12, 450, 2.75, 4"})
    void ornaments_cover_what_guides_of_small_balls_cover(String feet, int count, double smallest, double largest) {
        Brief brief = brief(feet + " ft");
        assertThat(shareCovered(brief)).isBetween(share(brief, count, smallest), share(brief, count, largest));
    }

    /** The share of the whole tree that so many balls cover; these guides count all sides. */
    private static double share(Brief brief, int balls, double inches) {
        return balls * disc(Length.ofInches(inches)) / brief.tree().form().cone().area();
    }

    private static double shareCovered(Brief brief) {
        double covered = needs(brief).needs().stream().filter(need -> need.layer() == Layer.ORNAMENTS)
                .mapToDouble(need -> need.quantity() * disc(need.diameter().orElseThrow())).sum();
        return covered / brief.tree().dressedArea();
    }

    private static double disc(Length diameter) {
        return Math.PI / 4 * diameter.metres() * diameter.metres();
    }

    /** livelikeyouarerich.com, "Christmas Tree Ornament Guide": at most one very large ornament for each foot or two. */
    @ParameterizedTest
    @ValueSource(strings = {"5", "6", "7", "7.5", "9", "10", "12"})
    void large_feature_ornaments_stay_below_one_a_foot(String feet) {
        int larger = quantity(brief(feet + " ft"), "ornaments/" + Role.FEATURE_ORNAMENT.word() + "/larger");
        assertThat(larger).isBetween(1, (int) Math.floor(Double.parseDouble(feet)));
    }
}
