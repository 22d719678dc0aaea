package boughwright.ui;

/** Amounts of money as people type them. */
final class Amounts {

    private Amounts() {
    }

    /** Without currency signs, spaces and thousands' commas: {@code $1,000} → {@code 1000}. What is no amount stays what it is. */
    static String plain(String typed) {
        String bare = typed.strip().replaceAll("^[^\\d.,-]{1,3}(?=\\d)|(?<=\\d)[^\\d.,-]{1,4}$", "");
        return bare.matches("\\d{1,3}(,\\d{3})+(\\.\\d+)?") ? bare.replace(",", "") : bare;
    }
}
