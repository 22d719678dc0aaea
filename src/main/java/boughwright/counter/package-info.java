/**
 * What happens between a plan and the customer's way home. Input: kept consultations, the shop's terms, what is on the shelf. Output:
 * quotes, packs held and handed over, what to pick, a private link, notes, and what the manager reads of all that. How packs are promised
 * without being promised twice is the shelf's; what a quote is made of is {@code quote}'s.
 */
package boughwright.counter;
