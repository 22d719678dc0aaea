package boughwright.counter;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** More with {@code -Dkills=1000}. */
class KilledKioskTest {

    private static final int KILLS = Integer.getInteger("kills", 100);
    private static final long SEED = 20261126;

    @TempDir
    private Path data;

    @Test
    void whatever_was_acknowledged_survives_every_kill_and_no_stock_is_lost_or_doubled() throws Exception {
        KilledKiosk.Seen seen = new KilledKiosk(data, SEED).run(KILLS);

        System.out.println(seen);
        assertThat(seen.kills()).isEqualTo(KILLS);
        assertThat(seen.holds()).isPositive();
        assertThat(seen.longestStart()).isLessThan(Duration.ofSeconds(20));
    }
}
