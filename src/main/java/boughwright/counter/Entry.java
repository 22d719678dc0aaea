package boughwright.counter;

import boughwright.consultation.Consultation;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * A consultation as the counter lists it.
 *
 * @param begunAt UTC, as are all its times
 * @param brief JSON of what was asked for, or of the answers so far
 * @param revision of the newest plan; 0 when there is none yet
 * @param total of the newest plan's kit, before tax
 * @param holdEnds when what is held for it falls
 */
public record Entry(String code, String nickname, LocalDateTime begunAt, LocalDateTime touchedAt, String brief, int revision, Optional<BigDecimal> total, State state,
        Optional<LocalDateTime> holdEnds) {

    /** How far it has come. */
    public enum State { ASKING, CLASH, PLANNED, QUOTED, HELD, READY, COLLECTED }

    public String spoken() {
        return Consultation.spoken(code);
    }
}
