package boughwright.drawing;

/**
 * The finish of a piece. Each is drawn so that it is told apart at arm's length: matte has no highlight, satin a broad
 * soft one, shiny a small hard one with a rim, metallic reflects in bands, glitter is speckled, glass lets the foliage
 * show through, natural is matte with some grain.
 */
public enum Surface { MATTE, SATIN, SHINY, METALLIC, GLITTER, GLASS, NATURAL }
