package boughwright.consultation;

import boughwright.storage.Settling;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Parts of the consultations for tests of others. */
public final class ConsultationFixture {

    private ConsultationFixture() {
    }

    public static Interviews interviews(JdbcClient database, Settling settling) {
        return new Interviews(database, settling);
    }
}
