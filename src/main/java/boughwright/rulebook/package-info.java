/**
 * Input: a brief and the texts of one rulebook edition. Output: numbers and findings, each with the rule or table row that gave it.
 *
 * <pre>
 *   *.drl ──▶ DrlCompiler ──▶ StyleRules ──run(facts)──▶ Finding (fact + rule)
 *   *.dmn ──▶ DmnCompiler ──▶ DmnTables ──ask(table, inputs)──▶ TableAnswer (values + row)
 *                 └── on any fault: RulebookFault (file, line, rule or table, rows, words)
 * </pre>
 *
 * The rule engine is known here and nowhere else. What the numbers mean, how they are rounded, and how an edition is kept or published
 * does not belong here.
 */
package boughwright.rulebook;
