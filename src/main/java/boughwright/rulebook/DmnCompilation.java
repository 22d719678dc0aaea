package boughwright.rulebook;

import java.util.List;

/** What became of the table files handed to {@link DmnCompiler}: tables to ask, or everything that is wrong with them. */
public sealed interface DmnCompilation {

    /** Every table answers every allowed input with exactly one row, and every output is of its kind. */
    record Sound(DmnTables tables) implements DmnCompilation {
    }

    /** At least one fault, in file order. */
    record Faulty(List<RulebookFault> faults) implements DmnCompilation {
        public Faulty {
            faults = faults.stream().sorted(RulebookFault.IN_FILE_ORDER).distinct().toList();
        }
    }
}
