package boughwright.needs;

/**
 * The house's measures for runs of ribbon, lengths in metres of ribbon.
 *
 * @param tail at either end of a run
 * @param loop a large loop; every run has at least two
 * @param smallLoop the small one that some runs have between
 * @param bowLoop one loop of a two-loop bow
 * @param smallLoops of a dozen runs, how many have a small loop between
 * @param endBows of a dozen runs, how many end in a two-loop bow; the rest of the dozen is plain
 */
public record RibbonMeasures(double tail, double loop, double smallLoop, double bowLoop, int smallLoops, int endBows) {

    /** A run of two large loops between two tails. */
    public double plainRun() {
        return 2 * tail + 2 * loop;
    }
}
