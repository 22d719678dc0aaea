package boughwright.counter;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;

/**
 * How the shop did over some days.
 *
 * @param days one for each day, the earliest first, those without a consultation too
 * @param products those that were proposed most first
 */
public record Figures(LocalDate from, LocalDate to, List<Day> days, List<Use> products) {

    public Figures {
        days = List.copyOf(days);
        products = List.copyOf(products);
    }

    /**
     * @param consultations begun on the day
     * @param planned of these, in which a kit was proposed
     * @param clashed in which wishes clashed
     * @param taken whose kit was held or collected
     * @param sum of the totals of those that were taken
     */
    public record Day(LocalDate day, int consultations, int planned, int clashed, int quoted, int taken, int collected, BigDecimal sum) {

        static Day none(LocalDate day) {
            return new Day(day, 0, 0, 0, 0, 0, 0, BigDecimal.ZERO);
        }

        Day plus(Day other) {
            return new Day(day, consultations + other.consultations, planned + other.planned, clashed + other.clashed, quoted + other.quoted, taken + other.taken,
                    collected + other.collected, sum.add(other.sum));
        }
    }

    /**
     * In how many consultations a product was proposed, put or held there by hand, swapped out by hand, or too scarce.
     */
    public record Use(String sku, int proposed, int chosen, int swappedOut, int blocked) {
    }

    public Day all() {
        return days.stream().reduce(Day.none(from), Day::plus);
    }

    /** Of a hundred consultations with a kit, how many were taken; 0 when there was none. */
    public BigDecimal acceptance() {
        Day all = all();
        return all.planned() == 0 ? BigDecimal.ZERO
                : BigDecimal.valueOf(100L * all.taken()).divide(BigDecimal.valueOf(all.planned()), 1, RoundingMode.HALF_UP);
    }

    /** Mean total of those that were taken; 0 when there was none. @param decimals of the currency */
    public BigDecimal meanTotal(int decimals) {
        Day all = all();
        return all.taken() == 0 ? BigDecimal.ZERO.setScale(decimals) : all.sum().divide(BigDecimal.valueOf(all.taken()), decimals, RoundingMode.HALF_UP);
    }
}
