package boughwright.consultation;

import boughwright.kit.Patience;
import boughwright.measure.Units;
import boughwright.needs.Adjustments;
import boughwright.proposal.AdjustmentsJson;
import boughwright.proposal.Designer;
import boughwright.proposal.Offers;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalJson;
import boughwright.publishing.ShopDoor;
import boughwright.shelf.Reservations;
import boughwright.shelf.Uses;
import boughwright.storage.Settling;
import boughwright.text.Language;
import boughwright.text.Text;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All saved consultations. What a method has saved and returned survives the loss of the process. */
@Repository
public class Consultations {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int TRIES = 50;
    private static final Duration OTHER_WAYS_WAIT = Duration.ofSeconds(10);

    private final JdbcClient database;
    private final Settling settling;
    private final ShopDoor shop;
    private final Uses uses;
    private final Interviews interviews;
    private final Reservations reservations;
    private final Workbench workbench = new Workbench(Runtime.getRuntime().availableProcessors(), OTHER_WAYS_WAIT);

    Consultations(JdbcClient database, Settling settling, ShopDoor shop, Uses uses, Interviews interviews, Reservations reservations) {
        this.database = database;
        this.settling = settling;
        this.shop = shop;
        this.uses = uses;
        this.interviews = interviews;
        this.reservations = reservations;
    }

    /**
     * Works a brief out for a consultation, in turn with others; what comes of it is not kept yet. What was asked for in the same way a moment
     * ago is recalled.
     *
     * @throws java.util.concurrent.CancellationException when {@code patience} is cancelled on the way
     */
    public Outcome workOut(Designer designer, String brief, Adjustments hand, long seed, Patience patience) {
        return workbench.proposal(designer, brief, hand, seed, patience);
    }

    /**
     * The other ways to meet the brief of a proposal; see {@link Designer#offers}. They come after those who have no proposal yet, and when the
     * shop is too full for them what was asked for stands alone.
     *
     * @throws java.util.concurrent.CancellationException when {@code patience} is cancelled on the way
     */
    public Offers offers(Designer designer, Proposal asked, Patience patience) {
        return workbench.beside(patience, () -> designer.offers(asked, patience)).orElseGet(() -> designer.asOffered(asked));
    }

    /** Saves a proposal that no interview went before, as the first of a new consultation. */
    public Saved begin(String brief, Outcome outcome) {
        refuseFaults(outcome);
        String code = interviews.begin(new Interviews.State("", "", units(outcome), Language.now().tag())).code();
        return save(code, 1, brief, outcome, Optional.empty());
    }

    /** Saves as the next revision of a consultation, or as the first of its interview; of two who change it at once, the later has the last word. */
    public Saved go(String code, String brief, Outcome outcome) {
        for (int i = 0; i < TRIES; i++) {
            Optional<Saved> last = open(code);
            if (last.isEmpty() && interviews.open(code).isEmpty()) {
                throw new IllegalArgumentException("no consultation " + code);
            }
            try {
                return save(code, last.map(Saved::revision).orElse(0) + 1, brief, outcome, last);
            } catch (DuplicateKeyException taken) {
                // Another tablet was faster; its revision stays, ours follows it.
            }
        }
        throw new IllegalStateException("no free revision of " + code + " was found in " + TRIES + " tries");
    }

    /**
     * Works a kept consultation out again, under the edition of the house rules that it was made with. What comes of it is what was
     * kept, unless catalogue or stock have changed since: then it is kept as a new revision, so that screen, print and interface
     * always show the same. What was kept in another language is compared in that one and answered in the one that is spoken; that
     * alone is no new revision.
     */
    public Optional<Reopened> reopen(String code) {
        return open(code).map(saved -> {
            Reopened reopened = Text.in(saved.language(), () -> reopened(saved));
            return saved.language() == Language.now() ? reopened : told(reopened);
        });
    }

    private Reopened reopened(Saved saved) {
        Designer designer = shop.designer(saved.edition(), reservations.of(saved.code()));
        Outcome outcome = workbench.proposal(designer, saved.brief(), saved.adjustments(), saved.seed(), Patience.usual());
        if (outcome instanceof Outcome.BadBrief || text(saved.code(), outcome).equals(saved.proposal())) {
            return new Reopened(saved, designer, outcome, false);
        }
        return new Reopened(go(saved.code(), saved.brief(), outcome), designer, outcome, true);
    }

    private Reopened told(Reopened reopened) {
        Saved saved = reopened.saved();
        Outcome outcome = reopened.outcome() instanceof Outcome.Made made
                ? reopened.designer().told(made, made.proposal().brief().units())
                : workbench.proposal(reopened.designer(), saved.brief(), saved.adjustments(), saved.seed(), Patience.usual());
        return new Reopened(saved, reopened.designer(), outcome, reopened.moved());
    }

    /** The proposal or the conflict as JSON, as {@link Saved#proposal()} has it, in the language of the outcome. */
    public static String json(Reopened reopened) {
        return text(reopened.saved().code(), reopened.outcome());
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

    /** The newest revision of those consultations that were changed last, the latest first. */
    public List<Saved> newest(int most) {
        return database.sql("""
                        select p.* from proposal p
                        join (select code, max(revision) as revision from proposal group by code) last on p.code = last.code and p.revision = last.revision
                        order by p.made_at desc, p.code fetch first :most rows only""")
                .param("most", most).query(Consultations::row).list();
    }

    private static void refuseFaults(Outcome outcome) {
        if (outcome instanceof Outcome.BadBrief) {
            throw new IllegalArgumentException("a brief with faults is not saved");
        }
    }

    private static Units units(Outcome outcome) {
        return outcome instanceof Outcome.Made made ? made.proposal().brief().units() : ((Outcome.NoKitFits) outcome).brief().units();
    }

    private Saved save(String code, int revision, String brief, Outcome outcome, Optional<Saved> before) {
        refuseFaults(outcome);
        Saved saved = outcome instanceof Outcome.Made made
                ? new Saved(code, revision, brief, made.proposal().adjustments(), made.proposal().seed(), true, text(code, outcome),
                        made.proposal().edition().id(), Language.now())
                : new Saved(code, revision, brief, ((Outcome.NoKitFits) outcome).adjustments(), ((Outcome.NoKitFits) outcome).seed(), false,
                        text(code, outcome), ((Outcome.NoKitFits) outcome).edition().id(), Language.now());
        LocalDateTime now = LocalDateTime.now(ZoneOffset.UTC);
        database.sql("""
                        insert into proposal (code, revision, made_at, brief, adjustments, seed, outcome, proposal, edition, language, total)
                        values (:code, :revision, :made, :brief, :adjustments, :seed, :outcome, :proposal, :edition, :language, :total)""")
                .param("code", code).param("revision", revision).param("made", now).param("brief", brief)
                .param("adjustments", AdjustmentsJson.of(saved.adjustments()).toString()).param("seed", saved.seed()).param("outcome", saved.fits() ? "kit" : "conflict")
                .param("proposal", saved.proposal()).param("edition", saved.edition()).param("language", saved.language().tag())
                .param("total", outcome instanceof Outcome.Made made ? made.proposal().kit().total().amount() : null).update();
        interviews.touch(code);
        uses.note(code, ProductUse.in(outcome, saved.adjustments(), before), now);
        settling.settle();
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

    private static Saved row(ResultSet row, int number) throws SQLException {
        return new Saved(row.getString("code"), row.getInt("revision"), row.getString("brief"), AdjustmentsJson.stored(row.getString("adjustments")),
                row.getLong("seed"), row.getString("outcome").equals("kit"), row.getString("proposal"), row.getString("edition"),
                Language.of(row.getString("language")));
    }
}
