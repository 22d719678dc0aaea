package boughwright.consultation;

import boughwright.proposal.AdjustmentsJson;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.ProposalJson;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import javax.sql.DataSource;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceUtils;
import org.springframework.stereotype.Repository;

/** All saved consultations. What a method has saved and returned survives the loss of the process. */
@Repository
public class Consultations {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int TRIES = 50;

    private final JdbcClient database;
    private final boolean h2;

    Consultations(JdbcClient database, DataSource source) {
        this.database = database;
        this.h2 = isH2(source);
    }

    /** Saves under a new code. */
    public Saved begin(String brief, Outcome outcome) {
        for (int i = 0; i < TRIES; i++) {
            try {
                return save(Codes.any(), 1, brief, outcome);
            } catch (DuplicateKeyException taken) {
                // Another consultation has these words already; others are as good.
            }
        }
        throw new IllegalStateException("no free code was found in " + TRIES + " tries");
    }

    /** Saves as the next revision of a code that exists; of two who change it at once, the later has the last word. */
    public Saved go(String code, String brief, Outcome outcome) {
        for (int i = 0; i < TRIES; i++) {
            int last = open(code).orElseThrow(() -> new IllegalArgumentException("no consultation " + code)).revision();
            try {
                return save(code, last + 1, brief, outcome);
            } catch (DuplicateKeyException taken) {
                // Another tablet was faster; its revision stays, ours follows it.
            }
        }
        throw new IllegalStateException("no free revision of " + code + " was found in " + TRIES + " tries");
    }

    /**
     * Works a kept consultation out again. What comes of it is what was kept, unless catalogue, stock or house rules have changed
     * since: then it is kept as a new revision, so that screen, print and interface always show the same.
     */
    public Optional<Reopened> reopen(String code, Designer designer) {
        return open(code).map(saved -> {
            Outcome outcome = designer.propose(saved.brief(), saved.adjustments(), saved.seed());
            if (outcome instanceof Outcome.BadBrief || text(saved.code(), outcome).equals(saved.proposal())) {
                return new Reopened(saved, outcome, false);
            }
            return new Reopened(go(saved.code(), saved.brief(), outcome), outcome, true);
        });
    }

    /** The newest revision; the code may be typed with spaces and in capitals. */
    public Optional<Saved> open(String code) {
        return Codes.read(code).flatMap(c -> database.sql("select * from proposal where code = :code order by revision desc fetch first 1 rows only")
                .param("code", c).query(Consultations::row).optional());
    }

    /** One revision, from 1; later ones are what hands made of it on a screen. */
    public Optional<Saved> open(String code, int revision) {
        return Codes.read(code).flatMap(c -> database.sql("select * from proposal where code = :code and revision = :revision")
                .param("code", c).param("revision", revision).query(Consultations::row).optional());
    }

    private Saved save(String code, int revision, String brief, Outcome outcome) {
        if (outcome instanceof Outcome.BadBrief) {
            throw new IllegalArgumentException("a brief with faults is not saved");
        }
        Saved saved = outcome instanceof Outcome.Made made
                ? new Saved(code, revision, brief, made.proposal().adjustments(), made.proposal().seed(), true, text(code, outcome))
                : new Saved(code, revision, brief, ((Outcome.NoKitFits) outcome).adjustments(), ((Outcome.NoKitFits) outcome).seed(), false,
                        text(code, outcome));
        database.sql("""
                        insert into proposal (code, revision, made_at, brief, adjustments, seed, outcome, proposal)
                        values (:code, :revision, :made, :brief, :adjustments, :seed, :outcome, :proposal)""")
                .param("code", code).param("revision", revision).param("made", LocalDateTime.now(ZoneOffset.UTC)).param("brief", brief)
                .param("adjustments", AdjustmentsJson.of(saved.adjustments()).toString()).param("seed", saved.seed()).param("outcome", saved.fits() ? "kit" : "conflict")
                .param("proposal", saved.proposal()).update();
        settle();
        return saved;
    }

    private static String text(String code, Outcome outcome) {
        ObjectNode proposal;
        if (outcome instanceof Outcome.Made made) {
            proposal = ProposalJson.of(made.proposal());
        } else {
            proposal = ProposalJson.of((Outcome.NoKitFits) outcome);
        }
        ObjectNode coded = JSON.createObjectNode();
        coded.put("code", code);
        coded.setAll(proposal);
        return ProposalJson.text(coded);
    }

    /** H2 may keep a commit in its own memory for a moment; a checkpoint puts it on the disk. */
    private void settle() {
        if (h2) {
            database.sql("checkpoint sync").update();
        }
    }

    private static boolean isH2(DataSource source) {
        Connection connection = DataSourceUtils.getConnection(source);
        try {
            return connection.getMetaData().getDatabaseProductName().equals("H2");
        } catch (SQLException e) {
            throw new IllegalStateException("the database does not say what it is", e);
        } finally {
            DataSourceUtils.releaseConnection(connection, source);
        }
    }

    private static Saved row(ResultSet row, int number) throws SQLException {
        return new Saved(row.getString("code"), row.getInt("revision"), row.getString("brief"), AdjustmentsJson.stored(row.getString("adjustments")),
                row.getLong("seed"), row.getString("outcome").equals("kit"), row.getString("proposal"));
    }
}
