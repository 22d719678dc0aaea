/**
 * Boughwright, a consultation kiosk for a shop that sells Christmas-tree trim.
 *
 * <p>Package names are the steps, in order; each owns what it puts out, and imports point to the left only. The words of the
 * needs stand before the rulebook, which answers in them, and before the kit, which reads them:
 *
 * <pre>
 *   brief ──▶ needs ◀── rulebook     kit ──▶ layout ──▶ plan ──▶ proposal ──▶ publishing ──▶ consultation ──▶ ui · api
 *               │       (Drools)      ▲     (geometry)           (all of it)  (what is live)  (saved)          cli
 *               └─────────────────────┤ (CBC)              drawing · document      ▲
 *                                 catalogue                (pictures, pages)     house (rules that staff tune)
 *                                                          palette · photo        shelf (what is sold) ◀── intake (files)
 *                                                          (an eye for colour)    quote (what it costs)
 *   measure · colour · text: what every step shares
 * </pre>
 *
 * This package itself only starts the program.
 */
package boughwright;
