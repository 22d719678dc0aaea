package boughwright.ui;

import boughwright.text.Text;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** Times of the day as people read them: by the clock of the shop, kept in UTC. */
final class ShopTime {

    private static final int MINUTES_OF_AN_HOUR = 60;
    private static final int HOURS_OF_A_DAY = 24;

    private ShopTime() {
    }

    static String moment(LocalDateTime utc) {
        return Text.moment(utc.atZone(ZoneOffset.UTC).withZoneSameInstant(ZoneId.systemDefault()).toLocalDateTime());
    }

    /** How long something is still to last, or has been: whole days, hours or minutes, whichever says enough. */
    static String span(Duration time) {
        long minutes = time.toMinutes();
        if (minutes < 2 * MINUTES_OF_AN_HOUR) {
            return Text.of("counter.minutes", minutes);
        }
        long hours = Math.round(minutes / (double) MINUTES_OF_AN_HOUR);
        return hours < 2 * HOURS_OF_A_DAY ? Text.of("counter.hours", hours) : Text.of("counter.days", Math.round(hours / (double) HOURS_OF_A_DAY));
    }
}
