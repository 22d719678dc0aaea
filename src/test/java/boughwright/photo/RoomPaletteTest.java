package boughwright.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.brief.Palette;
import boughwright.colour.Oklab;
import boughwright.colour.Srgb;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RoomPaletteTest {

    private static final String BEIGE = "#d0c8b5";
    private static final String BROWN = "#7a5536";
    private static final String SOFA = "#7f98b5";
    private static final String CUSHION = "#b32a2e";
    private static final String NIGHT = "#1f2430";

    private static RoomPalette of(Object... coloursAndShares) {
        List<PhotoColour> colours = new ArrayList<>();
        for (int i = 0; i < coloursAndShares.length; i += 2) {
            colours.add(new PhotoColour(Srgb.read((String) coloursAndShares[i]).orElseThrow(), (Double) coloursAndShares[i + 1]));
        }
        return RoomPalette.of(colours);
    }

    private static List<String> hex(RoomPalette palette) {
        return palette.palette().colours().stream().map(Srgb::hex).toList();
    }

    @Test
    void the_largest_colourful_one_leads_the_small_bright_one_is_the_spark_and_the_darkest_is_the_ground() {
        RoomPalette palette = of(BEIGE, 0.5, SOFA, 0.25, BROWN, 0.13, NIGHT, 0.08, CUSHION, 0.04);
        assertThat(hex(palette)).containsExactly(SOFA, BEIGE, CUSHION, NIGHT);
        assertThat(palette.seen()).containsExactly(true, true, true, true);
        assertThat(palette.palette().id()).isEqualTo(Palette.OWN);
    }

    @Test
    void among_greys_the_largest_leads() {
        assertThat(hex(of("#cccccc", 0.6, "#888888", 0.3, "#222222", 0.1)).subList(0, 2)).containsExactly("#cccccc", "#888888");
    }

    @Test
    void a_bright_colour_that_fills_the_room_is_no_spark() {
        RoomPalette palette = of(CUSHION, 0.6, BEIGE, 0.4);
        assertThat(hex(palette)).startsWith(CUSHION, BEIGE);
        assertThat(palette.seen()).containsExactly(true, true, false, false);
    }

    @Test
    void what_is_lacking_is_filled_from_the_main_colour() {
        RoomPalette palette = of(CUSHION, 1.0);
        assertThat(palette.seen()).containsExactly(true, false, false, false);
        Oklab main = Oklab.of(palette.palette().main());
        Oklab second = Oklab.of(palette.palette().second());
        Oklab spark = Oklab.of(palette.palette().spark());
        Oklab ground = Oklab.of(palette.palette().ground());
        assertThat(palette.palette().main().hex()).isEqualTo(CUSHION);
        assertThat(second.hue()).isCloseTo(main.hue(), within(2.0));
        assertThat(second.l()).isCloseTo(0.9, within(0.01));
        assertThat(Math.abs(spark.hue() - main.hue())).isCloseTo(180, within(3.0));
        assertThat(ground.l()).isCloseTo(0.26, within(0.01));
        assertThat(ground.chroma()).isLessThan(0.045);
    }

    @Test
    void a_light_main_colour_gets_a_second_half_as_light() {
        assertThat(Oklab.of(of("#f0c8b0", 1.0).palette().second()).l()).isCloseTo(0.48, within(0.01));
    }

    @Test
    void beside_a_grey_the_spark_is_brass() {
        assertThat(Oklab.of(of("#9a9a9a", 1.0).palette().spark()).hue()).isCloseTo(78, within(3.0));
    }

    @Test
    void a_single_dark_colour_leads_and_does_not_lie_in_the_ground_alone() {
        assertThat(of(NIGHT, 1.0).palette().main().hex()).isEqualTo(NIGHT);
        assertThat(hex(of(NIGHT, 0.9, BEIGE, 0.1))).startsWith(BEIGE).endsWith(NIGHT);
    }

    @Test
    void black_and_white_alone_still_give_four_colours() {
        assertThat(hex(of("#ffffff", 1.0))).hasSize(4).doesNotHaveDuplicates();
        assertThat(hex(of("#000000", 1.0))).hasSize(4).doesNotHaveDuplicates();
        assertThatThrownBy(() -> RoomPalette.of(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
