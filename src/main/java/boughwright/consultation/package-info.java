/**
 * Saved consultations and the open shop. Input: briefs and outcomes. Output: codes under which they are found again.
 *
 * <p>The only package that stores anything, knows the time of day or draws a random number.
 */
package boughwright.consultation;
