package boughwright.counter;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What became of one consultation.
 *
 * @param day on which it was begun, by the shop's calendar
 * @param planned whether a kit was proposed in it
 * @param clashed whether wishes clashed in it, at whatever time
 * @param taken whether its kit was held or collected: the customer said yes
 * @param total of the last quote, else of the last kit, before or after tax as the shop's prices are; empty when no kit was proposed
 */
record Fate(String code, LocalDate day, boolean planned, boolean clashed, boolean quoted, boolean taken, boolean collected, Optional<BigDecimal> total) {
}
