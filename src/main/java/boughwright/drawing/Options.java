package boughwright.drawing;

import java.util.Set;

/**
 * How a scene is shown. Start from {@link #plain(String, String)} and change what differs.
 *
 * @param widthPx     width of the picture, px; the height follows from the tree
 * @param ruler       scale at the right
 * @param layers      layers shown; null shows all; the layer named "lights" also carries the evening's glow
 * @param evening     a dusk ground with glowing lights instead of paper
 * @param title       short text for screen readers
 * @param description longer text for screen readers
 * @param background  whether the ground is painted; without it the picture is transparent
 * @param floor       whether the shadow on the floor is drawn
 * @param idPrefix    letters and digits before every id, so that several pictures can stand on one page
 * @param floorLabel  word at the ruler's foot
 */
public record Options(double widthPx, Ruler ruler, Set<String> layers, boolean evening, String title,
                      String description, boolean background, boolean floor, String idPrefix, String floorLabel) {

    public Options {
        layers = layers == null ? null : Set.copyOf(layers);
        if (!(widthPx > 0)) {
            throw new IllegalArgumentException("a picture needs a width, not " + widthPx + " px");
        }
        if (!idPrefix.matches("[A-Za-z][A-Za-z0-9]*")) {
            throw new IllegalArgumentException("an id prefix is a letter, then letters and digits: " + idPrefix);
        }
    }

    /** 560 px wide, ruler in feet, all layers, by day, on paper with a floor, ids prefixed "t". */
    public static Options plain(String title, String description) {
        return new Options(560, Ruler.FEET, null, false, title, description, true, true, "t", "floor");
    }

    public Options withWidth(double px) {
        return new Options(px, ruler, layers, evening, title, description, background, floor, idPrefix, floorLabel);
    }

    public Options withRuler(Ruler to, String floorWord) {
        return new Options(widthPx, to, layers, evening, title, description, background, floor, idPrefix, floorWord);
    }

    /** Null shows every layer. */
    public Options withLayers(Set<String> shown) {
        return new Options(widthPx, ruler, shown, evening, title, description, background, floor, idPrefix, floorLabel);
    }

    public Options withEvening(boolean on) {
        return new Options(widthPx, ruler, layers, on, title, description, background, floor, idPrefix, floorLabel);
    }

    public Options withGround(boolean paper, boolean floorShadow) {
        return new Options(widthPx, ruler, layers, evening, title, description, paper, floorShadow, idPrefix, floorLabel);
    }

    public Options withIdPrefix(String prefix) {
        return new Options(widthPx, ruler, layers, evening, title, description, background, floor, prefix, floorLabel);
    }
}
