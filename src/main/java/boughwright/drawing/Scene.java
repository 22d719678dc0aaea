package boughwright.drawing;

import java.util.List;

/**
 * A dressed tree. Two scenes that are equal give the same picture, letter for letter.
 *
 * @param seed the only source of variety: branches, needles and the small differences between like pieces
 */
public record Scene(TreeShape tree, List<Sprite> sprites, List<Band> bands, long seed) {

    public Scene {
        sprites = List.copyOf(sprites);
        bands = List.copyOf(bands);
    }
}
