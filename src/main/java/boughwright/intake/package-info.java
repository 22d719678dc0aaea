/**
 * Catalogue files that staff bring and take away: CSV, XLSX and JSON. Input: a stored file, and which of its headings means which column.
 * Output: a {@link boughwright.intake.Delivery} of rows that are good in the catalogue's own cells, and every fault with its place in the
 * file and its mend; the same products as a file; a marked copy of a file with faults.
 *
 * <pre>
 *   stored file ──▶ IntakeFile ──▶ ColumnGuess ──▶ Mapping ──▶ Intake.read ──▶ Delivery
 *                   (or Refused)   (shown, changed, remembered)                  └──▶ MarkedCopy
 *   products ──▶ CatalogueFile
 * </pre>
 *
 * <p>A file is read twice at most, as a stream: once to recognise it and once for its rows. Nothing a file can hold ends in an exception.
 *
 * <p>Does not belong here: what a delivery would change, and keeping it (shelf); screens.
 */
package boughwright.intake;
