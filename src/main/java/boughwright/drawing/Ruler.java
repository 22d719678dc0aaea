package boughwright.drawing;

/** The scale that stands at the right of the tree: none, one mark a foot, or one mark a quarter metre. */
public enum Ruler { NONE, FEET, METRES }
