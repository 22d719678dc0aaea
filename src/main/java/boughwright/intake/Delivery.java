package boughwright.intake;

import boughwright.catalogue.Product;
import java.util.List;
import java.util.Set;

/** What came of reading a file. */
public sealed interface Delivery {

    /**
     * Read to its end.
     *
     * @param rows those without a fault, in the order of the file
     * @param faults the first {@link Intake#FAULTS_LISTED} of them, in the order of the file
     * @param allFaults how many there are
     * @param allRows rows that are not blank, good or not, below the heading
     * @param faultySkus SKUs that stand in faulty rows, and in no good one
     * @param notes what was understood in another way than it stands there
     */
    record Read(Kind kind, List<GoodRow> rows, List<IntakeFault> faults, int allFaults, int allRows, Set<String> faultySkus, List<Note> notes)
            implements Delivery {

        /** Whether it may be taken whole. */
        public boolean faultless() {
            return allFaults == 0;
        }

        public int faultyRows() {
            return allRows - rows.size();
        }

        /** The products of a {@link Kind#WHOLE} file, in the order of the file; none for the other kinds. */
        public List<Product> products() {
            return rows.stream().filter(GoodRow.Whole.class::isInstance).map(row -> ((GoodRow.Whole) row).product()).toList();
        }
    }

    /** Not read; {@code sentence} says why and how to mend it. */
    record Refused(Refusal why, String sentence) implements Delivery {
    }

    /** Stopped by {@link Progress} after so many rows; nothing of it is kept. */
    record Cancelled(int rows) implements Delivery {
    }
}
