/**
 * Saved consultations, from the first answer of their interview on. Input: answers, briefs and outcomes. Output: codes under which they are
 * found again, and marks by which a tablet takes its own up again.
 *
 * <p>With publishing, shelf and storage the only package that stores anything, knows the time of day or draws a random number.
 */
package boughwright.consultation;
