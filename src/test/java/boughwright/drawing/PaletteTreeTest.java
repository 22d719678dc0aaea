package boughwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.brief.Fullness;
import boughwright.brief.Palette;
import boughwright.colour.Srgb;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PaletteTreeTest {

    private static final Palette PALETTE = new Palette("own", "Your own colours", new Srgb(0x8f, 0x2f, 0x4c), new Srgb(0xef, 0xe4, 0xcf),
            new Srgb(0xd0, 0x8a, 0x4e), new Srgb(0x2b, 0x24, 0x30));
    private static final TreeShape TREE = TreeShape.of(2.3, 1.3, Fullness.MEDIUM);

    @Test
    void five_pieces_in_ten_have_the_main_colour_three_the_second_and_ground_sits_deepest() {
        Scene scene = PaletteTree.scene(TREE, PALETTE);
        Map<String, Long> counts = scene.sprites().stream().filter(s -> s.id().startsWith("piece-"))
                .collect(Collectors.groupingBy(Sprite::colour, Collectors.counting()));
        double all = counts.values().stream().mapToLong(c -> c).sum();
        assertThat(counts.get("#8f2f4c") / all).isCloseTo(0.5, within(0.05));
        assertThat(counts.get("#efe4cf") / all).isCloseTo(0.3, within(0.02));
        assertThat(counts.get("#d08a4e") / all).isCloseTo(0.1, within(0.02));
        assertThat(scene.sprites().stream().filter(s -> s.colour().equals("#2b2430"))).isNotEmpty().allSatisfy(s -> assertThat(s.depth()).isLessThan(0.75));
        assertThat(scene.bands()).isNotEmpty().allSatisfy(b -> assertThat(b.baseColour()).isEqualTo("#8f2f4c"));
    }

    @Test
    void every_piece_hangs_within_the_tree_whatever_its_height() {
        for (double height : new double[] {0.6, 2.3, 3.6, 7.5}) {
            TreeShape tree = TreeShape.of(height, height * 0.56, Fullness.FULL);
            assertThat(PaletteTree.scene(tree, PALETTE).sprites()).filteredOn(s -> s.id().startsWith("piece-")).allSatisfy(s -> {
                assertThat(s.y()).isBetween(tree.lowestBranch(), tree.height());
                assertThat(Math.hypot(s.x(), s.z())).isLessThanOrEqualTo(tree.radiusAt(s.y()) + 1e-9);
            });
        }
    }

    @Test
    void the_picture_is_small_enough_to_change_at_a_touch_and_the_same_each_time() {
        String svg = PaletteTree.svg(TREE, PALETTE, "A tree", "In four colours");
        assertThat(svg).startsWith("<svg").contains("<title id=\"pt-title\">A tree</title>", "#8f2f4c").hasSizeLessThan(250_000);
        assertThat(PaletteTree.svg(TREE, PALETTE, "A tree", "In four colours")).isEqualTo(svg);
    }
}
