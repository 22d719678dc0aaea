package boughwright.catalogue;

/** GTIN-13 and its GS1 check digit. */
final class Gtin {

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
        return text.matches("\\d{13}");
    }

    static boolean rightCheckDigit(String thirteenDigits) {
        return checkDigit(thirteenDigits) == thirteenDigits.charAt(12) - '0';
    }
}
