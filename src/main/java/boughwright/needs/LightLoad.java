package boughwright.needs;

/**
 * The electrical load of the chosen lights, as a fact for the house's cautions.
 *
 * @param strings how many
 * @param watts of one string
 * @param runLimit how many the maker lets run end to end; 0 when the maker does not say
 */
public record LightLoad(int strings, double watts, int runLimit) {

    /** A 15 A circuit at 120 V carries 1800 W; a load of three hours or more may take 80 % of it (NEC 210.20(A)). */
    public static final double CIRCUIT_WATTS = 1440;

    public double totalWatts() {
        return strings * watts;
    }

    /** How many such strings one 15 A circuit may carry. */
    public int stringsPerCircuit() {
        return watts <= 0 ? Integer.MAX_VALUE : (int) Math.floor(CIRCUIT_WATTS / watts + 1e-9);
    }

    public boolean overCircuit() {
        return totalWatts() > CIRCUIT_WATTS;
    }
}
