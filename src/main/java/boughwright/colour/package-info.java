/**
 * Colour as an eye judges it. Input: a product's sRGB. Output: CIE Lab, Oklab, CIEDE2000 differences, WCAG contrast.
 *
 * <p>Does not belong here: which colours a look wants (brief) or how much a difference costs a kit (kit).
 */
package boughwright.colour;
