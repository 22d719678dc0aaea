package boughwright.catalogue;

import boughwright.brief.OwnPieces;
import boughwright.brief.Owned;
import boughwright.brief.Word;
import boughwright.catalogue.Traits.Family;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Level;
import boughwright.catalogue.Traits.Material;
import boughwright.catalogue.Traits.Pattern;
import boughwright.catalogue.Traits.Safety;
import boughwright.catalogue.Traits.Shape;
import boughwright.catalogue.Traits.Texture;
import boughwright.catalogue.Traits.Weave;
import boughwright.colour.Lab;
import boughwright.measure.Length;
import boughwright.measure.Money;
import boughwright.needs.Role;
import boughwright.text.Text;
import java.util.Currency;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Makes products of what customers describe, so that their pieces stand beside the shop's in kit, layout and drawing. They cost
 * nothing and there are none on the shelf.
 *
 * <p>What was not said is taken as it mostly is (common practice, no published source): a ball is shiny, shatterproof and 80 mm
 * wide, an ornament drops 100 mm, a flower is 130 mm wide, a ribbon is plain, closely woven and ten yards long.
 */
final class OwnGoods {

    /** Bulbs on a string when they were not counted. */
    static final int BULBS = 100;
    /** Watts of one bulb of unknown make: 48 W for 100 incandescent minis, the most in makers' tables (christmascentral.com). */
    private static final double WATTS = 0.48;

    private OwnGoods() {
    }

    static Product of(Owned owned, Currency currency) {
        OwnPieces pieces = owned.described().orElseThrow();
        OwnPieces.Kind kind = pieces.kind();
        Finish finish = pieces.finish().flatMap(f -> Word.read(Finish.class, f)).orElse(switch (kind) {
            case BALL -> Finish.SHINY;
            case SPRAY -> Finish.NATURAL;
            default -> Finish.MATTE;
        });
        boolean glass = finish == Finish.GLASS;
        boolean ribbon = kind == OwnPieces.Kind.RIBBON;
        boolean lights = kind == OwnPieces.Kind.LIGHTS || kind == OwnPieces.Kind.LIGHT_STRING;
        int bulbs = kind == OwnPieces.Kind.LIGHTS && pieces.count() > 0 && pieces.count() < BULBS ? pieces.count() : BULBS;
        return new Product(owned.sku(), "", Text.of("own.name", pieces.text()), "", roles(kind),
                Word.read(Family.class, pieces.family()).orElseThrow(), pieces.colour(), Optional.empty(), texture(kind), finish,
                glass ? Material.GLASS : material(kind), shape(kind),
                ribbon ? Optional.of(Pattern.PLAIN) : Optional.empty(), ribbon ? Optional.of(Weave.CLOSE) : Optional.empty(), width(pieces),
                length(pieces), lights ? Optional.of(new Product.Lights(bulbs, WATTS * bulbs, 0)) : Optional.empty(), 1, Money.zero(currency),
                Level.EVERYDAY, 0, Text.of("own.shelf"), Set.of(), glass ? Set.of(Safety.FRAGILE) : Set.of(), Lab.of(pieces.colour()));
    }

    /** How many pieces there are: bulbs are counted by the string. */
    static int quantity(OwnPieces pieces) {
        return pieces.kind() == OwnPieces.Kind.LIGHTS ? Math.max(1, pieces.count() / BULBS) : pieces.count();
    }

    private static Set<Role> roles(OwnPieces.Kind kind) {
        return new TreeSet<>(switch (kind) {
            case BALL -> Set.of(Role.FILLER_BALL);
            case ORNAMENT -> Set.of(Role.FEATURE_ORNAMENT);
            case FLOWER -> Set.of(Role.SINGLE_FLOWER, Role.FACE_FLOWER);
            case SPRAY -> Set.of(Role.SPRAY);
            case RIBBON -> Set.of(Role.ACCENT_RIBBON);
            case LIGHTS, LIGHT_STRING -> Set.of(Role.LIGHT_STRING);
        });
    }

    private static Texture texture(OwnPieces.Kind kind) {
        return switch (kind) {
            case FLOWER, SPRAY -> Texture.LEAFY;
            case RIBBON -> Texture.WOVEN;
            default -> Texture.SMOOTH;
        };
    }

    private static Material material(OwnPieces.Kind kind) {
        return switch (kind) {
            case BALL -> Material.SHATTERPROOF;
            case FLOWER, RIBBON -> Material.FABRIC;
            default -> Material.PLASTIC;
        };
    }

    private static Shape shape(OwnPieces.Kind kind) {
        return switch (kind) {
            case BALL -> Shape.BALL;
            case ORNAMENT -> Shape.DROP;
            case FLOWER -> Shape.OPEN_FLOWER;
            case SPRAY -> Shape.LEAF_SPRAY;
            case RIBBON -> Shape.RIBBON;
            case LIGHTS, LIGHT_STRING -> Shape.STRING;
        };
    }

    private static Length width(OwnPieces pieces) {
        return switch (pieces.kind()) {
            case BALL -> pieces.size().orElse(Length.ofMillimetres(80));
            case ORNAMENT -> Length.ofMillimetres(0.6 * drop(pieces).millimetres());
            case FLOWER -> pieces.size().orElse(Length.ofMillimetres(130));
            case SPRAY -> Length.ofMillimetres(90);
            case RIBBON -> pieces.size().orElse(Length.ofMillimetres(38));
            case LIGHTS, LIGHT_STRING -> Length.ofMillimetres(5);
        };
    }

    private static Length drop(OwnPieces pieces) {
        return pieces.size().orElse(Length.ofMillimetres(100));
    }

    private static Length length(OwnPieces pieces) {
        return switch (pieces.kind()) {
            case BALL -> Length.ofMillimetres(0);
            case ORNAMENT -> drop(pieces);
            case FLOWER -> Length.ofMillimetres(300);
            case SPRAY -> Length.ofMillimetres(350);
            case RIBBON -> Length.ofMillimetres(9144);
            case LIGHTS, LIGHT_STRING -> Length.ofMillimetres(10_000);
        };
    }
}
