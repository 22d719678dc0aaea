package boughwright.counter;

import boughwright.proposal.ShelfOrder;
import boughwright.shelf.Reservations;
import boughwright.storage.Settling;
import boughwright.storage.Transactions;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Packs held for customers, from the promise to the bag that is carried out. A consultation has one open hold at most. What a method has
 * done and returned survives the loss of the process; what it refuses has changed nothing. The same on all kiosks of one database.
 *
 * <p>Whoever changes a consultation's hold locks the consultation's row first, then products in the order of SKUs.
 */
@Repository
public class Holds {

    private static final String OPEN = "('HELD', 'READY', 'PARTLY')";

    private final JdbcClient database;
    private final Transactions transactions;
    private final Reservations reservations;
    private final Blocked blocked;
    private final Deeds deeds;
    private final Settling settling;
    private final Clock clock;

    Holds(JdbcClient database, Transactions transactions, Reservations reservations, Blocked blocked, Deeds deeds, Settling settling, Clock clock) {
        this.database = database;
        this.transactions = transactions;
        this.reservations = reservations;
        this.blocked = blocked;
        this.deeds = deeds;
        this.settling = settling;
        this.clock = clock;
    }

    /** Takes the work of a transaction back. */
    private static final class TooScarce extends RuntimeException {

        private final transient SortedMap<String, Integer> left;

        TooScarce(SortedMap<String, Integer> left) {
            super(null, null, false, false);
            this.left = left;
        }
    }

    /**
     * Holds packs for a consultation, all of them or none. What it held before is given back in the same breath, so that a changed plan
     * is held anew without losing what it had.
     *
     * @param wanted a product stands in it once
     * @param key of this one wish, whoever sends it again
     */
    public Holding hold(String code, List<Pack> wanted, Duration time, String author, String key) {
        if (wanted.isEmpty()) {
            return new Holding.Nothing();
        }
        try {
            Deeds.Done done = deeds.once("hold " + key, () -> {
                if (!Turn.take(database, code)) {
                    return "";
                }
                return String.valueOf(hold(code, wanted, time, author));
            });
            settling.settle();
            return done.answer().isEmpty() ? new Holding.Nothing() : new Holding.Held(hold(code, Integer.parseInt(done.answer())).orElseThrow(), done.again());
        } catch (TooScarce scarce) {
            scarce.left.keySet().forEach(sku -> blocked.note(sku, code, Blocked.Kind.HOLD));
            return new Holding.Scarce(scarce.left);
        }
    }

    private int hold(String code, List<Pack> wanted, Duration time, String author) {
        Optional<Hold> former = open(code);
        former.ifPresent(h -> end(h, Hold.State.RELEASED));
        reservations.giveBack(code);
        SortedMap<String, Integer> packs = new TreeMap<>();
        wanted.forEach(w -> packs.put(w.sku(), w.packs()));
        SortedMap<String, Integer> scarce = reservations.take(code, packs);
        if (!scarce.isEmpty()) {
            throw new TooScarce(scarce);
        }
        int number = database.sql("select coalesce(max(number), 0) + 1 from hold where code = :code").param("code", code).query(Integer.class).single();
        LocalDateTime now = now();
        database.sql("insert into hold (code, number, made_at, author, ends_at, state) values (:code, :number, :now, :author, :ends, 'HELD')")
                .param("code", code).param("number", number).param("now", now).param("author", author).param("ends", now.plus(time)).update();
        for (Pack pack : wanted) {
            database.sql("""
                            insert into hold_line (code, number, sku, name, shelf, packs, picked, collected, put_back)
                            values (:code, :number, :sku, :name, :shelf, :packs, :picked, 0, false)""")
                    .param("code", code).param("number", number).param("sku", pack.sku()).param("name", pack.name()).param("shelf", pack.shelf())
                    .param("packs", pack.packs()).param("picked", former.flatMap(h -> inBag(h, pack)).orElse(null)).update();
        }
        former.ifPresent(h -> carriedOver(h, packs));
        settle(code, number);
        return number;
    }

    /** Whether as many as are wanted now lie in the bag already. */
    private static Optional<Integer> inBag(Hold former, Pack pack) {
        return former.lines().stream().filter(l -> l.sku().equals(pack.sku()) && l.picked().orElse(0) - l.collected() >= pack.packs()).map(l -> pack.packs()).findFirst();
    }

    /** What the new hold has taken over from the bag of the former one need not be put back; what is over must be. */
    private void carriedOver(Hold former, SortedMap<String, Integer> packs) {
        for (Hold.Line line : former.lines()) {
            int bag = line.picked().orElse(0) - line.collected();
            if (bag > 0 && packs.getOrDefault(line.sku(), 0) == bag) {
                putBack(former.code(), former.number(), line.sku());
            }
        }
    }

    /** The hold of a consultation whose packs are still promised. */
    public Optional<Hold> open(String code) {
        return holds("where h.code = :code and h.state in " + OPEN, Map.of("code", code)).stream().findFirst();
    }

    /** The newest hold of a consultation, whatever has become of it. */
    public Optional<Hold> newest(String code) {
        return holds("where h.code = :code and h.number = (select max(number) from hold where code = :code)", Map.of("code", code)).stream().findFirst();
    }

    public Optional<Hold> hold(String code, int number) {
        return holds("where h.code = :code and h.number = :number", Map.of("code", code, "number", number)).stream().findFirst();
    }

    /** Holds that wait for somebody to go to the shelves, those that end soonest first. */
    public List<Hold> toPick() {
        return holds("where h.state = 'HELD' or h.state = 'PARTLY' and exists (select 1 from hold_line l where l.code = h.code and l.number = h.number and l.picked is null)",
                Map.of());
    }

    /** Bags that wait for their customers, those that end soonest first. */
    public List<Hold> inBags() {
        return holds("where h.state = 'READY' or h.state = 'PARTLY' and not exists (select 1 from hold_line l where l.code = h.code and l.number = h.number and l.picked is null)",
                Map.of());
    }

    /** Bags that nobody will collect any more. */
    public List<Hold> toPutBack() {
        return holds("""
                where h.state in ('COLLECTED', 'RELEASED', 'LAPSED') and exists (select 1 from hold_line l where l.code = h.code and l.number = h.number
                and l.picked > l.collected and not l.put_back)""", Map.of());
    }

    /** Open holds that fall within a time, the soonest first. */
    public List<Hold> endingWithin(Duration time) {
        return holds("where h.state in " + OPEN + " and h.ends_at <= :until", Map.of("until", now().plus(time)));
    }

    /** Open holds, the soonest to fall first. */
    public List<Hold> allOpen() {
        return holds("where h.state in " + OPEN, Map.of());
    }

    private List<Hold> holds(String where, Map<String, Object> values) {
        Map<String, Hold> holds = new LinkedHashMap<>();
        Map<String, List<Hold.Line>> lines = new LinkedHashMap<>();
        database.sql("""
                        select h.code, h.number, h.made_at, h.author, h.ends_at, h.state, h.settled_at,
                               l.sku, l.name, l.shelf, l.packs, l.picked, l.collected, l.put_back
                        from hold h join hold_line l on l.code = h.code and l.number = h.number\s""" + where + " order by h.ends_at, h.code, h.number")
                .params(values).query(row -> {
                    String id = row.getString("code") + " " + row.getInt("number");
                    if (!holds.containsKey(id)) {
                        holds.put(id, row(row));
                    }
                    lines.computeIfAbsent(id, i -> new ArrayList<>()).add(new Hold.Line(row.getString("sku"), row.getString("name"), row.getString("shelf"),
                            row.getInt("packs"), Optional.ofNullable((Integer) row.getObject("picked")), row.getInt("collected"), row.getBoolean("put_back")));
                });
        List<Hold> whole = new ArrayList<>();
        holds.forEach((id, h) -> whole.add(new Hold(h.code(), h.number(), h.madeAt(), h.author(), h.endsAt(), h.state(), h.settledAt(), lines.get(id).stream()
                .sorted(Comparator.comparing(Hold.Line::shelf, ShelfOrder.WALK).thenComparing(Hold.Line::name).thenComparing(Hold.Line::sku)).toList())));
        return whole;
    }

    private static Hold row(ResultSet row) throws SQLException {
        return new Hold(row.getString("code"), row.getInt("number"), row.getObject("made_at", LocalDateTime.class), row.getString("author"),
                row.getObject("ends_at", LocalDateTime.class), Hold.State.valueOf(row.getString("state")),
                Optional.ofNullable(row.getObject("settled_at", LocalDateTime.class)), List.of());
    }

    /** Lets an open hold last until so much later than now. @return as it is then; empty when it is not open any more */
    public Optional<Hold> extend(String code, Duration time) {
        return changed(code, () -> database.sql("update hold set ends_at = :ends where code = :code and state in " + OPEN).param("ends", now().plus(time))
                .param("code", code).update());
    }

    /** The customer does not come: everything goes back. @return as it is then; empty when nothing was held */
    public Optional<Hold> release(String code) {
        Optional<Hold> released = transactions.run(() -> {
            Turn.take(database, code);
            return open(code).flatMap(h -> ended(h, Hold.State.RELEASED));
        });
        settling.settle();
        return released;
    }

    private Optional<Hold> ended(Hold hold, Hold.State state) {
        if (!end(hold, state)) {
            return Optional.empty();
        }
        reservations.giveBack(hold.code());
        return hold(hold.code(), hold.number());
    }

    /** Of two who end it, one does. A hold of which something was collected counts as collected. */
    private boolean end(Hold hold, Hold.State state) {
        boolean some = hold.lines().stream().anyMatch(l -> l.collected() > 0);
        return database.sql("update hold set state = :state, settled_at = :now where code = :code and number = :number and state in " + OPEN)
                .param("state", (some ? Hold.State.COLLECTED : state).name()).param("now", now()).param("code", hold.code()).param("number", hold.number()).update() == 1;
    }

    /**
     * Ends all holds whose time is up. Each in a transaction of its own, whichever kiosk comes first.
     *
     * @return those that fell
     */
    public List<Hold> lapse() {
        List<Hold> fallen = new ArrayList<>();
        for (Hold due : endingWithin(Duration.ZERO)) {
            transactions.run(() -> {
                Turn.take(database, due.code());
                return hold(due.code(), due.number()).filter(h -> h.state().open() && !h.endsAt().isAfter(now())).flatMap(h -> ended(h, Hold.State.LAPSED));
            }).ifPresent(fallen::add);
        }
        if (!fallen.isEmpty()) {
            settling.settle();
        }
        return fallen;
    }

    /**
     * Somebody has been at the shelf of a product.
     *
     * @param found packs that lie in the bag now. Fewer than were promised: no more are there, so the others are neither promised nor on hand
     * @return as it is then; empty when it is not open any more, or has no such product
     */
    public Optional<Hold> pick(String code, String sku, int found) {
        return changed(code, () -> {
            Optional<Hold.Line> line = open(code).flatMap(h -> h.lines().stream().filter(l -> l.sku().equals(sku)).findFirst());
            if (line.isEmpty()) {
                return 0;
            }
            int bag = Math.max(line.get().collected(), Math.min(found, line.get().packs() - line.get().missing()));
            int gone = line.get().packs() - line.get().missing() - bag;
            int updated = database.sql("update hold_line set picked = :picked where code = :code and sku = :sku and number = (select max(number) from hold where code = :code)")
                    .param("picked", bag).param("code", code).param("sku", sku).update();
            if (gone > 0) {
                reservations.missing(code, sku, gone);
                blocked.note(sku, code, Blocked.Kind.PICK);
            }
            return updated;
        });
    }

    /** It was a slip: nobody has been at the shelf of this product yet. What was found missing stays missing. */
    public Optional<Hold> unpick(String code, String sku) {
        return changed(code, () -> database.sql("""
                        update hold_line set picked = null where code = :code and sku = :sku and picked = packs and collected = 0
                        and number = (select max(number) from hold where code = :code)""")
                .param("code", code).param("sku", sku).update());
    }

    /** Runs a change of the open hold; it is not made when there is none, or its time is up. */
    private Optional<Hold> changed(String code, java.util.function.IntSupplier change) {
        Optional<Hold> after = transactions.run(() -> {
            Turn.take(database, code);
            Optional<Hold> hold = open(code).filter(h -> h.endsAt().isAfter(now()));
            if (hold.isEmpty() || change.getAsInt() == 0) {
                return Optional.<Hold>empty();
            }
            settle(code, hold.get().number());
            return hold(code, hold.get().number());
        });
        settling.settle();
        return after;
    }

    /** Gives the state its name after what became of the lines. */
    private void settle(String code, int number) {
        Hold hold = hold(code, number).orElseThrow();
        Hold.State state = hold.lines().stream().allMatch(l -> l.left() == 0) ? Hold.State.COLLECTED
                : hold.lines().stream().anyMatch(l -> l.collected() > 0) ? Hold.State.PARTLY
                : hold.lines().stream().allMatch(l -> l.picked().isPresent()) ? Hold.State.READY : Hold.State.HELD;
        if (state == Hold.State.COLLECTED && hold.lines().stream().allMatch(l -> l.collected() == 0)) {
            // Nothing of it was found; there is nothing to collect either.
            state = Hold.State.RELEASED;
        }
        database.sql("update hold set state = :state, settled_at = :settled where code = :code and number = :number").param("state", state.name())
                .param("settled", state.open() ? null : now()).param("code", code).param("number", number).update();
    }

    /** What came of handing packs over. */
    public sealed interface Collecting {

        /** @param again whether it had been handed over before, with the same key */
        record Collected(Hold hold, boolean again) implements Collecting {
        }

        /** Nothing is held any more: it was collected or released already, or has fallen. */
        record NotHeld() implements Collecting {
        }
    }

    /**
     * The customer takes packs home, as many of each as are still held at most. The rest stays held until the hold ends.
     *
     * @param taken packs by SKU
     * @param key of this one handing over, whoever sends it again
     */
    public Collecting collect(String code, Map<String, Integer> taken, String key) {
        Deeds.Done done = deeds.once("collect " + key, () -> {
            Turn.take(database, code);
            Optional<Hold> hold = open(code).filter(h -> h.endsAt().isAfter(now()));
            if (hold.isEmpty()) {
                return "";
            }
            SortedMap<String, Integer> handed = new TreeMap<>();
            for (Hold.Line line : hold.get().lines()) {
                int packs = Math.min(line.left(), taken.getOrDefault(line.sku(), 0));
                if (packs > 0) {
                    handed.put(line.sku(), packs);
                    database.sql("""
                                    update hold_line set collected = collected + :packs, picked = coalesce(picked, packs)
                                    where code = :code and number = :number and sku = :sku""")
                            .param("packs", packs).param("code", code).param("number", hold.get().number()).param("sku", line.sku()).update();
                }
            }
            if (!handed.isEmpty()) {
                reservations.handOver(code, handed);
                settle(code, hold.get().number());
                database.sql("update consultation set touched_at = :now where code = :code").param("now", now()).param("code", code).update();
            }
            return String.valueOf(hold.get().number());
        });
        settling.settle();
        return done.answer().isEmpty() ? new Collecting.NotHeld() : new Collecting.Collected(hold(code, Integer.parseInt(done.answer())).orElseThrow(), done.again());
    }

    /** Packs that the customer of a consultation has taken home, by SKU; empty when nothing was, or nobody has said so here. */
    public SortedMap<String, Integer> collected(String code) {
        SortedMap<String, Integer> packs = new TreeMap<>();
        database.sql("select sku, sum(collected) as packs from hold_line where code = :code and collected > 0 group by sku").param("code", code).query(row -> {
            packs.put(row.getString("sku"), row.getInt("packs"));
        });
        return packs;
    }

    /** What lay in a bag that nobody collects lies on its shelf again. */
    public void putBack(String code, int number, String sku) {
        database.sql("update hold_line set put_back = true where code = :code and number = :number and sku = :sku").param("code", code)
                .param("number", number).param("sku", sku).update();
    }

    /** How much of its time a hold has left; never negative. */
    public Duration left(Hold hold) {
        Duration left = Duration.between(now(), hold.endsAt());
        return left.isNegative() ? Duration.ZERO : left;
    }

    private LocalDateTime now() {
        return Utc.now(clock);
    }
}
