package boughwright.proposal;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Shelves in the order in which one walks past them: numbers by their value, so that D3-2 comes before D3-12. */
public final class ShelfOrder implements Comparator<String> {

    public static final ShelfOrder WALK = new ShelfOrder();

    private static final Pattern PART = Pattern.compile("\\d+|\\D+");

    private ShelfOrder() {
    }

    @Override
    public int compare(String one, String other) {
        Matcher a = PART.matcher(one);
        Matcher b = PART.matcher(other);
        while (true) {
            boolean moreA = a.find();
            boolean moreB = b.find();
            if (!moreA || !moreB) {
                return Boolean.compare(moreA, moreB);
            }
            int order = compareParts(a.group(), b.group());
            if (order != 0) {
                return order;
            }
        }
    }

    private static int compareParts(String a, String b) {
        boolean numbers = Character.isDigit(a.charAt(0)) && Character.isDigit(b.charAt(0));
        return numbers ? new BigInteger(a).compareTo(new BigInteger(b)) : a.compareTo(b);
    }

    /** The letters that a shelf begins with: {@code D3-12} → {@code D}. */
    public static String aisle(String shelf) {
        Matcher part = PART.matcher(shelf);
        return part.lookingAt() ? part.group().strip() : "";
    }
}
