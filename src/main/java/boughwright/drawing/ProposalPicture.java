package boughwright.drawing;

import boughwright.brief.Brief;
import boughwright.catalogue.Catalogue;
import boughwright.kit.Kit;
import boughwright.layout.Layout;
import boughwright.measure.Units;
import boughwright.text.Text;
import java.util.Locale;

/** Pictures of one proposal, with titles and descriptions in words; its scene is made once and drawn from any side. */
public final class ProposalPicture {

    /** Pictures on screen and paper are shown at about this width, px, and their words are sized for it. */
    private static final double SHOWN_WIDTH = 400;

    private final Scene scene;
    private final Options options;

    /** @param catalogue holds every product of the kit */
    public ProposalPicture(Brief brief, Kit kit, Layout layout, Catalogue catalogue) {
        this.scene = DressedTree.scene(brief, kit, layout, catalogue);
        String height = brief.tree().height().show(brief.units());
        this.options = Options.plain(
                        Text.of("drawing.title", height, brief.look().shownTitle()),
                        Text.of("drawing.description", height, brief.palette().shownTitle(), layout.pieces().size(), layout.ribbonRuns().size()))
                .withRuler(brief.units() == Units.FEET ? Ruler.FEET : Ruler.METRES, Text.of("drawing.floor"));
    }

    /** Short, since it comes before thousands of references. */
    private static String letter(String place, View view) {
        return place + view.name().toLowerCase(Locale.ROOT).charAt(0);
    }

    /** To scale, with a ruler, on paper. */
    public String svg(View view) {
        return TreePicture.svg(scene, view, options.withIdPrefix(letter("v", view)));
    }

    /** For a page that brings its own ground; larger words on the ruler, since it is shown small. */
    public String onScreen(View view, boolean evening) {
        return TreePicture.svg(scene, view, options.withGround(false, true).withEvening(evening).withWidth(SHOWN_WIDTH)
                .withIdPrefix(letter("s", view)));
    }

    /** From the front, for a page that shows several trees; each needs a name of its own there. */
    public String beside(String name) {
        return TreePicture.svg(scene, View.FRONT, options.withGround(false, true).withWidth(SHOWN_WIDTH).withIdPrefix(name));
    }

    /** From the front for its own sake: no ground and no ruler. */
    public String shown() {
        return TreePicture.svg(scene, View.FRONT, options.withGround(false, true).withRuler(Ruler.NONE, ""));
    }

    /** For a printed page: no ground, no shadow on the floor. */
    public String printed(View view) {
        return TreePicture.svg(scene, view, options.withGround(false, false).withWidth(SHOWN_WIDTH).withIdPrefix(letter("p", view)));
    }
}
