package boughwright.rulebook;

import java.util.List;

/** What became of the rule files handed to {@link DrlCompiler}: rules to run, or everything that is wrong with them. */
public sealed interface DrlCompilation {

    /** Every declared rule was loaded. */
    record Sound(StyleRules rules) implements DrlCompilation {
    }

    /** At least one fault, in file order. Nothing was loaded. */
    record Faulty(List<RulebookFault> faults) implements DrlCompilation {
        public Faulty {
            faults = faults.stream().sorted(RulebookFault.IN_FILE_ORDER).distinct().toList();
        }
    }
}
