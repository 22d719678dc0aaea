package boughwright.catalogue;

import boughwright.brief.Word;

/** The words in which a catalogue describes a product. */
public final class Traits {

    private Traits() {
    }

    public enum Family implements Word {
        RED, BURGUNDY, PINK, COPPER, GOLD, CHAMPAGNE, CREAM, WHITE, SILVER, GREEN, BLUE, PURPLE, BROWN, BLACK
    }

    public enum Texture implements Word {
        SMOOTH, VELVET, WOVEN, JACQUARD, SHEER, FEATHERED, BERRIED, LEAFY, NEEDLED, TWIGGY, BEADED, FACETED, RIBBED, BARK, FUR
    }

    public enum Finish implements Word {
        MATTE, SATIN, SHINY, METALLIC, GLITTER, GLASS, NATURAL
    }

    public enum Material implements Word {
        SHATTERPROOF, GLASS, FABRIC, WOOD, METAL, PAPER, PLASTIC, DRIED, FEATHER, WIRE
    }

    public enum Shape implements Word {
        BALL, DROP, FINIAL, ICICLE, STAR, SNOWFLAKE, BIRD, ACORN, PINECONE, BELL, HOUSE,
        OPEN_FLOWER, MAGNOLIA, POINSETTIA, ROSE, PEONY, ANEMONE, DAHLIA,
        BERRY_SPRAY, LEAF_SPRAY, FERN_SPRAY, TWIG_SPRAY, PINE_SPRAY, EUCALYPTUS_SPRAY, FEATHER_SPRAY, GRASS_SPRAY, CURL_SPRAY,
        RIBBON, STRING
    }

    /** The weave's decoration; anything but plain and stripe counts as patterned. */
    public enum Pattern implements Word {
        PLAIN, DOTS, STRIPE, LEAF, PLAID, METALLIC
    }

    public enum Weave implements Word {
        OPEN, CLOSE
    }

    /** Price level within the shop's own range. */
    public enum Level implements Word {
        VALUE, EVERYDAY, FINE
    }

    /** What must be known before a piece hangs where children or animals reach. */
    public enum Safety implements Word {
        FRAGILE, FOOD_LIKE, SMALL_PARTS, SHARP, TINSEL
    }
}
