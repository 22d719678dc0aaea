/**
 * House rules as staff see, change, try and carry them. Input: the files of an edition, and hands. Output: what is wrong with a draft,
 * what differs between two editions, what a draft would do to consultations, and the files of a new edition.
 *
 * <pre>
 *   edition files ──▶ EditionTexts ──▶ HouseRules (sheets, numbers, words, looks, palettes, as typed)
 *                                        ├─▶ HouseCheck ──▶ Complaint (page, table, row, column, mend)
 *                                        ├─▶ Comparison ──▶ Change
 *                                        └─▶ EditionTexts ──▶ edition files ──▶ Rulebook ──▶ TradeFacts, ReferenceBrief, Rehearsal
 * </pre>
 *
 * Staff edit data, never code: what they type reaches the rule engine as cells that are written here. What is kept, who may
 * change it and what is live does not belong here.
 */
package boughwright.house;
