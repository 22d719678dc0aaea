package boughwright.rulebook;

import java.util.Comparator;

/**
 * What a rule concluded, and which rule it was.
 *
 * @param fact what the rule inserted
 * @param rule the rule that inserted it: its id answers "why?", its sentence tells the customer
 */
public record Finding<T>(T fact, RuleName rule) {

    /** By rule, then by the fact's text; a record's text is its content, so equal runs give equal lists. */
    static final Comparator<Finding<?>> IN_RULE_ORDER = Comparator.<Finding<?>, RuleName>comparing(Finding::rule)
            .thenComparing(finding -> finding.fact().toString());
}
