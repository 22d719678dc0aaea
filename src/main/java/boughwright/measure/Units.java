package boughwright.measure;

/** The units in which a person reads lengths; nothing inside the program depends on them. */
public enum Units {
    FEET, METRES;

    /** The units of a text that a person wrote, feet when it names neither: {@code 228 cm} → METRES. */
    public static Units of(String lengthText) {
        String plain = lengthText.strip().toLowerCase(java.util.Locale.ROOT);
        boolean metric = plain.endsWith("m") && !plain.endsWith("in");
        return metric ? METRES : FEET;
    }
}
