package boughwright.needs;

import boughwright.brief.Word;
import boughwright.text.Text;

/** A property of a product that house rules may speak of, each with words for values. */
public enum Trait implements Word {
    TEXTURE, FINISH, MATERIAL, PATTERN, WEAVE, SHAPE, SCALE, SAFETY, FAMILY, LEVEL, PRODUCT;

    /** A value of the trait as people read it in the language that is spoken: {@code leaf-spray} → leaf spray. */
    public String said(String value) {
        return Text.or((this == LEVEL ? "" : "value.") + word() + "." + value, value.replace('-', ' '));
    }
}
