/**
 * An eye for colour: how the colours of a palette, and those of the kit that was chosen for it, stand to one another. Input: a palette,
 * or a kit with its brief and needs. Output: a {@link boughwright.palette.PaletteReading}, and the sentences that say it.
 *
 * <p>Only remarks: nothing here chooses a product or forbids a colour. Does not belong here: the arithmetic of colours (colour), what
 * counts for which palette colour (kit), pictures of it (drawing).
 */
package boughwright.palette;
