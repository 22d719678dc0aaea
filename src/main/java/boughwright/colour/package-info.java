/**
 * Colour as an eye judges it, and in words. Input: a product's sRGB. Output: differences, contrast, the same colour in the spaces below, a name.
 *
 * <pre>
 *   Srgb ◀──▶ LinearRgb ◀──▶ Xyz ◀──▶ Oklab ◀──▶ Oklch ──▶ mapped into sRGB (GamutMapping, CSS Color 4)
 *    │            ▲                     └─▶ ΔE OK
 *    │            └──▶ Lab ◀──▶ Lch
 *    │                  └─▶ ΔE 00 (Ciede2000)
 *    ├─▶ contrast (WCAG 2.2)
 *    └─▶ ColourName (ISCC–NBS)
 * </pre>
 *
 * <p>Every conversion goes both ways and keeps what lies beyond sRGB, until it is clipped to 8 bits or mapped. All spaces are relative to D65.
 * {@code Lab} judges differences; {@code Oklch} is for ordering, rings of hue and mapping.
 *
 * <p>Beside them: how colours are seen without one kind of cone ({@code Deficiency}) or by lamplight ({@code WarmLight}); what a set of them is as
 * a {@code Scheme}, and which {@code HueTemplate} it fits.
 *
 * <p>Does not belong here: which colours a look wants (brief) or how much a difference costs a kit (kit).
 */
package boughwright.colour;
