package boughwright.publishing;

import boughwright.text.Language;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** The language of this shop for those whose browser asks for none that is spoken here: English unless {@code boughwright.language} says otherwise. */
@Component
public class ShopLanguage {

    private final Language language;

    ShopLanguage(@Value("${boughwright.language:en}") String tag) {
        this.language = Language.read(tag).orElseThrow(() -> new IllegalArgumentException("boughwright.language is en, de or es, not " + tag));
    }

    public Language language() {
        return language;
    }
}
