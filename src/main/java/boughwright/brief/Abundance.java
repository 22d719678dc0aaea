package boughwright.brief;

/** How much the tree is to carry. */
public enum Abundance implements Word {
    RESTRAINED, GENEROUS, LAVISH
}
