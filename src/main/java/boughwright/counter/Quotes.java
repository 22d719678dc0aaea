package boughwright.counter;

import boughwright.consultation.Consultations;
import boughwright.consultation.Reopened;
import boughwright.consultation.Saved;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.quote.Quote;
import boughwright.quote.QuoteJson;
import boughwright.quote.Substitution;
import boughwright.quote.Substitutions;
import boughwright.storage.Settling;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Quotes that were made. What a method has kept and returned survives the loss of the process. */
@Repository
public class Quotes {

    private final JdbcClient database;
    private final Consultations consultations;
    private final ShopTerms terms;
    private final Deeds deeds;
    private final Blocked blocked;
    private final Settling settling;
    private final Clock clock;

    Quotes(JdbcClient database, Consultations consultations, ShopTerms terms, Deeds deeds, Blocked blocked, Settling settling, Clock clock) {
        this.database = database;
        this.consultations = consultations;
        this.terms = terms;
        this.deeds = deeds;
        this.blocked = blocked;
        this.settling = settling;
        this.clock = clock;
    }

    /**
     * Prices the plan as it is now, at the shop's terms of today.
     *
     * @param by who makes it
     * @param key of this one wish, whoever sends it again
     * @return empty when there is no plan to price: no such consultation, or no kit fits
     */
    public Optional<Quote> make(String code, String by, String key) {
        Optional<Reopened> reopened = consultations.reopen(code);
        if (reopened.isEmpty() || !(reopened.get().outcome() instanceof Outcome.Made made)) {
            return Optional.empty();
        }
        Saved saved = reopened.get().saved();
        List<Substitution> substitutions = substitutions(saved, made.proposal());
        Terms now = terms.now();
        Deeds.Done done = deeds.once("quote " + key, () -> {
            Turn.take(database, saved.code());
            int number = database.sql("select coalesce(max(number), 0) + 1 from quote where code = :code").param("code", saved.code()).query(Integer.class).single();
            LocalDate today = LocalDate.now(clock);
            Quote quote = Quote.of(made.proposal(), new Quote.Made(saved.code(), number, saved.revision(), by, today,
                    today.plusDays(now.number(Terms.Number.QUOTE_DAYS))), now.tax(), substitutions);
            database.sql("insert into quote (code, number, made_at, valid_to, total, content) values (:code, :number, :at, :to, :total, :content)")
                    .param("code", saved.code()).param("number", number).param("at", Utc.now(clock))
                    .param("to", quote.validTo()).param("total", quote.total().amount()).param("content", QuoteJson.text(quote)).update();
            return String.valueOf(number);
        });
        settling.settle();
        return quote(saved.code(), Integer.parseInt(done.answer()));
    }

    /** Since the last quote, or since the plan was made at first. */
    private List<Substitution> substitutions(Saved saved, Proposal proposal) {
        int seen = newest(saved.code()).map(Quote::revision).orElse(1);
        Optional<Saved> before = consultations.open(saved.code(), seen).filter(b -> b.fits() && seen < saved.revision());
        List<Substitution> found = before.map(b -> Substitutions.since(b.proposal(), proposal)).orElse(List.of());
        found.forEach(s -> proposal.catalogue().products().stream().filter(p -> p.name().equals(s.was())).findFirst()
                .ifPresent(p -> blocked.note(p.sku(), saved.code(), Blocked.Kind.PLAN)));
        return found;
    }

    /** @param code as it is kept */
    public Optional<Quote> newest(String code) {
        return database.sql("select content from quote where code = :code order by number desc fetch first 1 rows only").param("code", code)
                .query(String.class).optional().map(QuoteJson::read);
    }

    public Optional<Quote> quote(String code, int number) {
        return database.sql("select content from quote where code = :code and number = :number").param("code", code).param("number", number)
                .query(String.class).optional().map(QuoteJson::read);
    }

    /** The newest first. */
    public List<Quote> all(String code) {
        return database.sql("select content from quote where code = :code order by number desc").param("code", code).query(String.class).list().stream()
                .map(QuoteJson::read).toList();
    }

    /** Whether it holds today, for the plan as it is now. */
    public boolean holds(Quote quote, Saved now) {
        return quote.holdsOn(LocalDate.now(clock)) && quote.revision() == now.revision();
    }
}
