/**
 * Colours out of photos. Input: the bytes of a picture of a product or of a room. Output: its few dominant colours with their shares and a
 * product's likely finish, or a refusal that names what is wrong; from a room's colours, a palette.
 *
 * <p>Nothing is kept of a picture, neither on disk nor here. Does not belong here: how files reach the kiosk (ui, api), what the shop has in
 * these colours (catalogue).
 */
package boughwright.photo;
