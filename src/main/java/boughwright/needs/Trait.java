package boughwright.needs;

import boughwright.brief.Word;

/** A property of a product that house rules may speak of, each with words for values. */
public enum Trait implements Word {
    TEXTURE, FINISH, MATERIAL, PATTERN, WEAVE, SHAPE, SCALE, SAFETY, FAMILY, LEVEL, PRODUCT
}
