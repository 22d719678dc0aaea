package boughwright.intake;

import boughwright.text.Text;

/** Carries a refusal up to where it becomes an outcome; never leaves the package. */
final class RefusedFile extends Exception {

    private static final long serialVersionUID = 1;

    private final Refusal why;

    RefusedFile(Refusal why, Object... values) {
        super(Text.of("intake.refusal." + why.word(), values), null, false, false);
        this.why = why;
    }

    Refusal why() {
        return why;
    }
}
