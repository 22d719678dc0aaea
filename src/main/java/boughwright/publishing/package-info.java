/**
 * What is live and who said so. Input: drafts of house rules and the rules folder. Output: editions with their history, and the open shop
 * under the edition of the day.
 *
 * <pre>
 *   rules folder ──▶ ShopDoor ──▶ Designer under the live edition, or under any other by its id
 *   draft ──▶ Publisher (trial, doubts, reference briefs) ──▶ Editions ──▶ ShopDoor
 * </pre>
 *
 * Saved consultations do not belong here, nor what a house rule means.
 */
package boughwright.publishing;
