/**
 * What the shop sells. Input: a CSV file, or rows of cells from a file in another format. Output: a {@link boughwright.catalogue.Catalogue}, or every fault with line, column,
 * value and mend, and nothing half-read.
 *
 * <p>Does not belong here: which product suits a tree (kit).
 */
package boughwright.catalogue;
