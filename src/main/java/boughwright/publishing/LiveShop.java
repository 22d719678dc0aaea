package boughwright.publishing;

import boughwright.proposal.Designer;
import java.time.LocalDate;

/**
 * The shop under the edition that is live.
 *
 * @param edition its number
 * @param on the day for which this was found out
 */
record LiveShop(int edition, Designer designer, LocalDate on) {
}
