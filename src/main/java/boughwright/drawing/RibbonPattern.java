package boughwright.drawing;

/** What is woven or printed on the overlay ribbon. */
public enum RibbonPattern { PLAIN, DOTS, STRIPE, LEAF, PLAID, METALLIC }
