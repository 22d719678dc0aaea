package boughwright.catalogue;

/** GTINs and their GS1 check digit. The catalogue keeps the thirteen digits of a GTIN-13. */
public final class Gtin {

    private Gtin() {
    }

    /**
     * The check digit for the first twelve digits: weights 3, 1, 3, 1 … from the right; what is missing to the next ten
     * (GS1, "How to calculate a check digit manually").
     */
    static int checkDigit(String twelveDigits) {
        int sum = 0;
        for (int i = 0; i < 12; i++) {
            sum += (twelveDigits.charAt(i) - '0') * (i % 2 == 0 ? 1 : 3);
        }
        return (10 - sum % 10) % 10;
    }

    static boolean wellFormed(String text) {
        return text.length() == 13 && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    static boolean rightCheckDigit(String thirteenDigits) {
        return checkDigit(thirteenDigits) == thirteenDigits.charAt(12) - '0';
    }

    /**
     * A GTIN-8, GTIN-12 or GTIN-13 as the catalogue keeps it: on the right of a field of thirteen digits, with zeros before it. Weights are
     * counted from the right, so that such zeros change no check digit (GS1 General Specifications: GTINs stand right-justified in a field of
     * fourteen, filled with zeros; here the fourteenth is always zero).
     *
     * @param digits at most thirteen
     */
    public static String thirteen(String digits) {
        return "0".repeat(13 - digits.length()) + digits;
    }

    /** Whether the last of at most thirteen digits is the check digit of those before it. */
    public static boolean holds(String digits) {
        return rightCheckDigit(thirteen(digits));
    }

    /**
     * The GTIN-13 of the piece within the case that a GTIN-14 names: without the indicator that leads it, and with its own check digit.
     *
     * @param fourteenDigits an indicator, twelve digits of the piece, a check digit
     */
    public static String within(String fourteenDigits) {
        String twelve = fourteenDigits.substring(1, 13);
        return twelve + checkDigit(twelve);
    }

    /** Whether the last of fourteen digits is the check digit of those before it: the indicator has the weight 3. */
    public static boolean caseHolds(String fourteenDigits) {
        int ofTheRest = checkDigit(fourteenDigits.substring(1, 13));
        int indicator = fourteenDigits.charAt(0) - '0';
        return (ofTheRest + 10 - indicator * 3 % 10) % 10 == fourteenDigits.charAt(13) - '0';
    }
}
