package boughwright.needs;

import boughwright.brief.Word;

/** A measure of a product that house rules may bound: width and length in metres, lightness as CIE L* from 0 to 100. */
public enum Dimension implements Word {
    WIDTH, LENGTH, LIGHTNESS
}
