/**
 * Draws the tree: from a scene of placed pieces and ribbon runs, or a bare tree in its room, or one product, to SVG text.
 *
 * <p>Input: {@link boughwright.drawing.Scene}, {@link boughwright.drawing.View}, {@link boughwright.drawing.Options}; for
 * the interview a {@link boughwright.drawing.TreeShape} and {@link boughwright.drawing.RoomPicture.Room}; for lists a
 * {@link boughwright.drawing.ProductPicture.Product}. Output: SVG 1.1 text that browsers and printers draw alike, with no
 * scripts, styles, filters or outside references. Equal input gives equal text.
 *
 * <p>What does not belong here: choosing or placing pieces, units other than metres, words other than those passed in.
 */
package boughwright.drawing;
