package boughwright.kit;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.List;

/**
 * One linear programme with binary and continuous variables, solved by CBC on one thread. It knows nothing of kits.
 *
 * <p>Deterministic as long as the limit is not reached. The native memory is freed on closing.
 */
final class IntegerProgramme implements AutoCloseable {

    /** What a search came to. */
    enum Outcome {
        /** Proven within the gap that was asked for. */
        SOLVED,
        /** The best that was found in time. */
        STOPPED,
        IMPOSSIBLE,
        /** The time was over before anything was found or ruled out. */
        OUT_OF_TIME
    }

    private final MPSolver solver = MPSolver.createSolver("CBC");
    private final MPObjective objective = solver.objective();
    private final List<MPVariable> rewarded = new ArrayList<>();

    @Override
    public void close() {
        solver.delete();
    }

    MPVariable binary() {
        return solver.makeBoolVar("");
    }

    /** A continuous variable in [0, most]. */
    MPVariable upTo(double most) {
        return solver.makeNumVar(0, most, "");
    }

    MPConstraint between(double least, double most) {
        return solver.makeConstraint(least, most, "");
    }

    MPConstraint atLeast(double least) {
        return solver.makeConstraint(least, MPSolver.infinity(), "");
    }

    MPConstraint atMost(double most) {
        return solver.makeConstraint(-MPSolver.infinity(), most, "");
    }

    void worth(MPVariable variable, double points) {
        objective.setCoefficient(variable, points);
        rewarded.add(variable);
    }

    void worth(double constant) {
        objective.setOffset(objective.offset() + constant);
    }

    /** From now on only what is worth so much counts; to be asked for when everything has its worth. */
    void reach(double points) {
        MPConstraint reached = atLeast(points - objective.offset());
        rewarded.forEach(v -> reached.setCoefficient(v, objective.getCoefficient(v)));
    }

    Outcome maximise(double gap, Patience patience) {
        objective.setMaximization();
        return solve(gap, patience);
    }

    Outcome minimise(double gap, Patience patience) {
        objective.setMinimization();
        return solve(gap, patience);
    }

    /** Of the best that was found; meaningless without one. */
    double value() {
        return objective.value();
    }

    /** No choice can be better. */
    double bound() {
        return objective.bestBound();
    }

    private Outcome solve(double gap, Patience patience) {
        patience.check();
        solver.setTimeLimit(patience.millis());
        MPSolverParameters parameters = new MPSolverParameters();
        parameters.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, gap);
        long start = System.nanoTime();
        MPSolver.ResultStatus status = solver.solve(parameters);
        double spent = (System.nanoTime() - start) / 1e6 * Runtime.getRuntime().availableProcessors();
        parameters.delete();
        patience.check();
        return switch (status) {
            case OPTIMAL -> Outcome.SOLVED;
            case FEASIBLE -> Outcome.STOPPED;
            // Stopped soon after its first relaxation, CBC calls a sound programme infeasible. Its limit counts the processor time of
            // the whole process, which is at most that of all processors.
            case INFEASIBLE -> spent < patience.millis() / 2.0 ? Outcome.IMPOSSIBLE : Outcome.OUT_OF_TIME;
            // "Found nothing in time" must not be mistaken for "nothing fits".
            case NOT_SOLVED -> Outcome.OUT_OF_TIME;
            default -> throw new IllegalStateException("the solver stopped with " + status);
        };
    }
}
