package boughwright.needs;

import boughwright.brief.Word;
import boughwright.text.Text;
import java.util.Arrays;

/** A property of a product that house rules may speak of, each with words for values. */
public enum Trait implements Word {
    TEXTURE, FINISH, MATERIAL, PATTERN, WEAVE, SHAPE, SCALE, SAFETY, FAMILY, LEVEL, PRODUCT;

    /** A value of the trait as people read it in the language that is spoken: {@code leaf-spray} → leaf spray. */
    public String said(String value) {
        return Text.or(key(value), value.replace('-', ' '));
    }

    /** A word of a table, a catalogue or a look as people read it, whatever trait it is a value of; one that is nowhere known stays as it is. */
    public static String word(String word) {
        String own = Text.or("house.word." + word, "");
        if (!own.isEmpty()) {
            return own;
        }
        return Arrays.stream(values()).map(trait -> Text.or(trait.key(word), "")).filter(said -> !said.isEmpty()).findFirst().orElse(word);
    }

    private String key(String value) {
        return (this == LEVEL ? "" : "value.") + word() + "." + value;
    }
}
