/**
 * Boughwright, a consultation kiosk for a shop that sells Christmas-tree trim.
 *
 * <p>Package names are the steps, in order; each owns what it puts out, and imports point to the left only:
 *
 * <pre>
 *   brief ──▶ rulebook ──▶ needs ──▶ kit ──▶ layout ──▶ plan ──▶ proposal ──▶ consultation ──▶ ui · api
 *             (Drools)               (CBC)  (geometry)          (all of it)   (saved)          cli
 *                                      ▲                  drawing · document
 *                                  catalogue              (pictures, pages)
 *   measure · colour · text: what every step shares
 * </pre>
 *
 * This package itself only starts the program.
 */
package boughwright;
