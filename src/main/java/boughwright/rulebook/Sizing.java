package boughwright.rulebook;

import boughwright.brief.Brief;
import boughwright.brief.Tree;
import boughwright.measure.Length;
import boughwright.needs.Reason;
import boughwright.text.Text;
import boughwright.text.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;

/**
 * The arithmetic of quantities: table value for the height × girth × fullness × seen-from × abundance, then the table's rounding.
 *
 * <p>Girth is the lateral area of this tree's cone over that of a medium tree of the same height. A tree within a tenth of the
 * usual is taken as usual, since tapes and makers' figures differ by as much; beyond that only the excess counts. Girth falls as a
 * tree of one diameter grows, and quantities must not: a value is never below that of the same tree cut down to the foot of any
 * row of the table beneath its height. With that, nothing falls as a tree grows, gets wider, fuller, is seen from more sides or
 * is dressed more lavishly.
 */
final class Sizing {

    private static final String BASE = Asked.BASE;
    private static final BigDecimal LEAST_FEET = BigDecimal.valueOf(3);
    private static final BigDecimal MOST_FEET = BigDecimal.valueOf(20);
    /** More than any tree carries; keeps a slip in a table from overflowing. */
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

    private final DmnTables tables;
    private final Words words;

    /** @param words what the tables' sentences are in other languages */
    Sizing(DmnTables tables, Words words) {
        this.tables = tables;
        this.words = words;
    }

    /** A number and why it is that number. */
    record Sized(int quantity, Reason reason) {
    }

    Sized size(Quantity what, Brief brief) {
        return size(what, brief, Map.of());
    }

    /** @param kind inputs of the base table beside the tree's and the scheme's own, such as a diameter */
    Sized size(Quantity what, Brief brief, Map<String, String> kind) {
        Tree tree = brief.tree();
        Map<String, String> more = words(brief, kind);
        TableAnswer base = base(what, feet(tree), more);
        TableAnswer policy = tables.ask(what.file(), "Policy", Map.of("height", feet(tree)));
        boolean girth = policy.flag("girth");
        double value = base.number().doubleValue() * (girth ? Girth.of(tree) : 1);
        WrittenTable written = tables.table(what.file(), BASE);
        for (WrittenTable.Row row : written.rows()) {
            NumberInterval heights = written.interval(row, "height");
            // Below this height a tree of the same diameter would be too broad to be a tree.
            BigDecimal foot = heights.from().max(feet(tree.widestDiameter().metres() / Tree.WIDEST));
            if (foot.compareTo(feet(tree)) < 0 && heights.contains(foot) && answers(written, row, more)) {
                Tree lower = tree.withHeight(Length.ofFeet(foot.doubleValue()));
                double there = base(what, foot, more).number().doubleValue() * (girth ? Girth.of(lower) : 1);
                value = Math.max(value, there);
            }
        }
        Factors factors = factors(what, brief);
        Rounded rounded = round(value * factors.product(), policy);
        double plain = base.number().doubleValue();
        boolean usual = !girth || Girth.of(tree) == 1 && round(plain * factors.product(), policy).quantity() == rounded.quantity();
        // What is told is what was reckoned with, be it this tree's girth or what a lower tree of its width would take.
        double told = usual || plain == 0 ? 1 : value / plain;
        return new Sized(rounded.quantity(), reason(what, brief, base, factors, policy, rounded, value, told, ""));
    }

    /**
     * A count by surface: the share of the seen surface that the table gives, over the disc of one piece.
     *
     * @param diameter of one piece
     */
    Sized sizeBySurface(Quantity what, Brief brief, Map<String, String> kind, Length diameter) {
        Map<String, String> more = words(brief, kind);
        TableAnswer base = base(what, feet(brief.tree()), more);
        TableAnswer policy = tables.ask(what.file(), "Policy", Map.of("height", feet(brief.tree())));
        Factors factors = factors(what, brief);
        double share = base.number().doubleValue() * factors.product();
        double disc = Math.PI / 4 * diameter.metres() * diameter.metres();
        Rounded rounded = round(share * brief.tree().dressedArea() / disc, policy);
        String percent = Text.number(new BigDecimal(BigDecimal.valueOf(share * 100).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString()));
        return new Sized(rounded.quantity(), reason(what, brief, base, factors, policy, rounded, base.number().doubleValue() * brief.tree().dressedArea() / disc, 1, percent));
    }

    /** All words that a base table may ask for. */
    private static Map<String, String> words(Brief brief, Map<String, String> kind) {
        Map<String, String> words = new HashMap<>(kind);
        words.put("fullness", brief.tree().fullness().word());
        words.put("seen from", brief.tree().seenFrom().word());
        words.put("abundance", brief.abundance().word());
        return words;
    }

    private record Factors(TableAnswer fullness, TableAnswer seenFrom, TableAnswer abundance) {

        double product() {
            return fullness.number().doubleValue() * seenFrom.number().doubleValue() * abundance.number().doubleValue();
        }
    }

    private Factors factors(Quantity what, Brief brief) {
        return new Factors(
                tables.ask(what.file(), "Fullness factor", Map.of("fullness", brief.tree().fullness().word())),
                tables.ask(what.file(), "Seen-from factor", Map.of("seen from", brief.tree().seenFrom().word())),
                tables.ask(what.file(), "Abundance factor", Map.of("abundance", brief.abundance().word())));
    }

    private TableAnswer base(Quantity what, BigDecimal feet, Map<String, String> more) {
        Map<String, Object> inputs = new HashMap<>(more);
        inputs.put("height", feet);
        return tables.ask(what.file(), BASE, inputs);
    }

    /** Whether a row is about these inputs, height apart. */
    private static boolean answers(WrittenTable table, WrittenTable.Row row, Map<String, String> more) {
        for (int i = 0; i < table.inputs().size(); i++) {
            String wanted = more.get(table.inputs().get(i).name());
            String cell = row.inputs().get(i).strip();
            if (wanted != null && !cell.equals("-") && !TableReader.texts(cell).orElseThrow().contains(wanted)) {
                return false;
            }
        }
        return true;
    }

    /** Rounded to a millionth of a foot, which hides the last bits of a conversion from a table's edges. */
    private static BigDecimal feet(Tree tree) {
        return feet(tree.height().metres());
    }

    private static BigDecimal feet(double metres) {
        return BigDecimal.valueOf(new Length(metres).feet()).setScale(6, RoundingMode.HALF_UP).max(LEAST_FEET).min(MOST_FEET);
    }

    /** @param raised whether the table's least made it more than it would be */
    private record Rounded(int quantity, boolean raised) {
    }

    private static Rounded round(double value, TableAnswer policy) {
        // Nine decimals are far below anything a table means, and far above the noise of floating point.
        BigDecimal exact = BigDecimal.valueOf(value).setScale(9, RoundingMode.HALF_UP);
        RoundingMode mode = switch (policy.text("rounding")) {
            case "up" -> RoundingMode.CEILING;
            case "down" -> RoundingMode.FLOOR;
            default -> RoundingMode.HALF_UP;
        };
        int rounded = exact.setScale(0, mode).min(MOST).intValue();
        int least = policy.number("least").intValue();
        return new Rounded(Math.max(least, rounded), least > rounded);
    }

    /** @param exact the quantity before factors and rounding */
    private Reason reason(Quantity what, Brief brief, TableAnswer base, Factors factors, TableAnswer policy, Rounded rounded, double exact, double girth, String share) {
        StringBuilder text = new StringBuilder(words.of(base.reason())
                .replace("{height}", brief.tree().height().show(brief.units()))
                .replace("{quantity}", String.valueOf(rounded.quantity()))
                .replace("{share}", share + " %"));
        long percent = Math.round(Math.abs(girth - 1) * 100);
        if (percent >= 1) {
            text.append(' ').append(Text.of(girth > 1 ? "need.girth.wider" : "need.girth.slimmer", String.valueOf(percent)));
        }
        for (TableAnswer factor : new TableAnswer[] {factors.fullness(), factors.seenFrom(), factors.abundance()}) {
            // A factor that rounding or the least has swallowed is no reason of this number.
            double without = exact * factors.product() / factor.number().doubleValue();
            if (factor.number().signum() != 0 && round(without, policy).quantity() != rounded.quantity()) {
                text.append(' ').append(words.of(factor.reason()));
            }
        }
        if (rounded.raised()) {
            text.append(' ').append(Text.of("need.least", rounded.quantity(), words.of(policy.reason())));
        }
        return new Reason(words.of(tables.title(what.file())), Text.of("need.row", String.valueOf(base.row())), text.toString());
    }
}
