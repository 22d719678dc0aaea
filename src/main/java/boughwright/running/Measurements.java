package boughwright.running;

import boughwright.proposal.Outcome;
import boughwright.proposal.ProposalWatch;
import io.micrometer.core.instrument.DistributionSummary;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.concurrent.TimeUnit;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionException;

/**
 * Measurements of the kiosk: {@code boughwright.proposals} (how long, by outcome), {@code boughwright.kit.gap} (how far kits may be from the
 * best, a fraction), {@code boughwright.consultations.open} (touched in the last half hour) and {@code boughwright.holds.packs}.
 */
@Component
class Measurements implements ProposalWatch {

    private static final Duration OPEN = Duration.ofMinutes(30);

    private final Timer made;
    private final Timer conflicts;
    private final DistributionSummary gap;

    Measurements(MeterRegistry registry, JdbcClient database, Clock clock) {
        this.made = timer(registry, "kit");
        this.conflicts = timer(registry, "conflict");
        this.gap = DistributionSummary.builder("boughwright.kit.gap").description("How far a kit may be from the best, as a fraction")
                .publishPercentiles(0.5, 0.95, 1).register(registry);
        Gauge.builder("boughwright.consultations.open", () -> counted(database.sql("select count(*) from consultation where touched_at > :since")
                .param("since", LocalDateTime.ofInstant(clock.instant().minus(OPEN), ZoneOffset.UTC))))
                .description("Consultations touched in the last half hour").register(registry);
        Gauge.builder("boughwright.holds.packs", () -> counted(database.sql("select coalesce(sum(held), 0) from stock")))
                .description("Packs that are held for somebody").register(registry);
    }

    private static Timer timer(MeterRegistry registry, String outcome) {
        return Timer.builder("boughwright.proposals").description("How long a proposal took to work out").tag("outcome", outcome)
                .publishPercentiles(0.5, 0.95, 0.99).register(registry);
    }

    /** Unknown while the database is away. */
    private static double counted(JdbcClient.StatementSpec query) {
        try {
            return query.query(Long.class).single();
        } catch (DataAccessException | TransactionException away) {
            return Double.NaN;
        }
    }

    @Override
    public void proposed(long nanos, Outcome outcome) {
        if (outcome instanceof Outcome.Made kit) {
            made.record(nanos, TimeUnit.NANOSECONDS);
            gap.record(kit.proposal().kit().gap());
        } else if (outcome instanceof Outcome.NoKitFits) {
            conflicts.record(nanos, TimeUnit.NANOSECONDS);
        }
    }
}
