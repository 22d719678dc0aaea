/**
 * The layout: where each piece goes. Input: needs, kit, tree and seed. Output: a {@link boughwright.layout.Layout} with
 * placements, ribbon runs, cut list, gaps and measures of evenness.
 *
 * <p>Pure geometry in metres; knows no screen. Axes are those of {@link boughwright.layout.Point}. Does not belong here: the
 * words of the plan, and how a piece is drawn.
 */
package boughwright.layout;
