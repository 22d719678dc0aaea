/**
 * The screens. Input: what people touch. Output: what they see. Views are thin; {@link boughwright.ui.Interview} and
 * {@link boughwright.ui.Proposing} lead and know no screen.
 *
 * <p>Vaadin only here. Does not belong here: any rule, number or sentence; sentences are in the message bundle.
 */
package boughwright.ui;
