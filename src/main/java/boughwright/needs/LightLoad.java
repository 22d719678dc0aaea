package boughwright.needs;

/**
 * The electrical load of the chosen lights, as a fact for the house's cautions.
 *
 * @param strings how many
 * @param watts of one string
 * @param runLimit how many the maker lets run end to end; 0 when the maker does not say
 */
public record LightLoad(int strings, double watts, int runLimit) {

    public double totalWatts() {
        return strings * watts;
    }

    /** How many such strings a circuit may carry on which the house puts so many watts. */
    public int stringsWithin(double circuitWatts) {
        return watts <= 0 ? Integer.MAX_VALUE : (int) Math.floor(circuitWatts / watts + 1e-9);
    }
}
