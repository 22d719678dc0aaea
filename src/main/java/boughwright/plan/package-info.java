/**
 * The plan: what to do at home, in order. Input: brief, needs, kit, layout and the house's cautions. Output: a
 * {@link boughwright.plan.Plan} of steps with heights, clock positions and minutes, and what to stand on.
 *
 * <p>Does not belong here: pictures (drawing), pages (document), screens (ui).
 */
package boughwright.plan;
