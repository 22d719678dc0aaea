package boughwright.drawing;

/** The shape of one piece, with what its point of attachment means. */
public enum Form {
    BALL(Hold.CENTRE), DROP(Hold.HANGS), FINIAL(Hold.HANGS), ICICLE(Hold.HANGS), STAR(Hold.HANGS),
    SNOWFLAKE(Hold.HANGS), BIRD(Hold.PERCHES), ACORN(Hold.HANGS), PINECONE(Hold.HANGS), BELL(Hold.HANGS),
    HOUSE(Hold.HANGS),
    /** Five broad petals round a crown of stamens, as a hellebore. */
    OPEN_FLOWER(Hold.FACES), MAGNOLIA(Hold.FACES), POINSETTIA(Hold.FACES), ROSE(Hold.FACES), PEONY(Hold.FACES),
    ANEMONE(Hold.FACES), DAHLIA(Hold.FACES),
    BERRY_SPRAY(Hold.GROWS), LEAF_SPRAY(Hold.GROWS), FERN_SPRAY(Hold.GROWS), TWIG_SPRAY(Hold.GROWS),
    PINE_SPRAY(Hold.GROWS), EUCALYPTUS_SPRAY(Hold.GROWS), FEATHER_SPRAY(Hold.GROWS), GRASS_SPRAY(Hold.GROWS),
    CURL_SPRAY(Hold.GROWS),
    LIGHT(Hold.CENTRE),
    /** An accent: a pair of ribbon tails from one knot. */
    TAILS(Hold.TIED), ONE_LOOP_BOW(Hold.TIED), TWO_LOOP_BOW(Hold.TIED);

    /** How a piece relates to its point: centred on it, hung below it, sitting on it, facing out, growing or tied. */
    enum Hold { CENTRE, HANGS, PERCHES, FACES, GROWS, TIED }

    private final Hold hold;

    Form(Hold hold) {
        this.hold = hold;
    }

    Hold hold() {
        return hold;
    }
}
