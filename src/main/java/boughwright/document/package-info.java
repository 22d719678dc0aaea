/**
 * The printed plan.
 *
 * <p>Input: a proposal and its picture. Output: pages, as PDF. Does not belong here: what the plan says (plan), how a piece is
 * drawn (drawing).
 *
 * <pre>
 *   proposal ──▶ PlanPages (Html, plan.css) ──┐
 *   picture  ──▶ Picture (Stamps) ────────────┴──▶ PlanDocument ──▶ bytes
 * </pre>
 */
package boughwright.document;
