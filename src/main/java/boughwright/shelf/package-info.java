/**
 * The shop's shelf as it is kept: products, their photos, what was done to them by whom. Input: rows that have been read and checked
 * ({@link boughwright.intake}), single cells that staff change, stock and prices from the till. Output: the
 * {@link boughwright.catalogue.Catalogue} that proposals are made from, told to whoever listens whenever it changes.
 *
 * <p>Does not belong here: what a file looks like (intake), which edition of the house rules is live (publishing).
 */
package boughwright.shelf;
