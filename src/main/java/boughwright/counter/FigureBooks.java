package boughwright.counter;

import boughwright.counter.Figures.Day;
import boughwright.counter.Figures.Use;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * How the shop does: from the consultations that are kept, and from the sums of a day that are left of those that have been forgotten. A
 * consultation counts on the day on which it was begun, once, whether it is still kept or not.
 */
@Repository
public class FigureBooks {

    /** Of a sum that belongs to no product. */
    private static final String ALL = "";

    private final JdbcClient database;
    private final Fates fates;
    private final Clock clock;

    FigureBooks(JdbcClient database, Fates fates, Clock clock) {
        this.database = database;
        this.fates = fates;
        this.clock = clock;
    }

    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** @param to not before {@code from}; both included */
    public Figures of(LocalDate from, LocalDate to) {
        Map<LocalDate, Day> days = new TreeMap<>();
        for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
            days.put(day, Day.none(day));
        }
        fates.between(from, to).forEach(f -> days.computeIfPresent(f.day(), (d, sum) -> sum.plus(day(f))));
        Map<String, Map<String, Integer>> uses = new HashMap<>();
        fates.products(from, to).forEach(row -> count(uses, text(row, "sku"), text(row, "what"), ((Number) value(row, "many")).intValue()));
        database.sql("select on_day, measure, sku, amount from past_day where on_day >= :from and on_day <= :to").param("from", from).param("to", to).query(row -> {
            LocalDate day = row.getObject("on_day", LocalDate.class);
            String measure = row.getString("measure");
            BigDecimal amount = row.getBigDecimal("amount");
            if (row.getString("sku").equals(ALL)) {
                days.computeIfPresent(day, (d, sum) -> sum.plus(past(d, measure, amount)));
            } else {
                count(uses, row.getString("sku"), measure, amount.intValue());
            }
        });
        List<Use> products = new ArrayList<>();
        uses.forEach((sku, what) -> products.add(new Use(sku, what.getOrDefault("PROPOSED", 0), what.getOrDefault("CHOSEN", 0), what.getOrDefault("SWAPPED_OUT", 0),
                what.getOrDefault("BLOCKED", 0))));
        products.sort(Comparator.comparing(Use::proposed).reversed().thenComparing(Use::sku));
        return new Figures(from, to, List.copyOf(days.values()), products);
    }

    private static void count(Map<String, Map<String, Integer>> uses, String sku, String what, int many) {
        uses.computeIfAbsent(sku, s -> new HashMap<>()).merge(what, many, Integer::sum);
    }

    private static Object value(Map<String, Object> row, String column) {
        // H2 gives names of columns in capitals, PostgreSQL does not.
        Object value = row.get(column);
        return value == null ? row.get(column.toUpperCase(Locale.ROOT)) : value;
    }

    private static String text(Map<String, Object> row, String column) {
        return String.valueOf(value(row, column));
    }

    private static Day day(Fate fate) {
        return new Day(fate.day(), 1, fate.planned() ? 1 : 0, fate.clashed() ? 1 : 0, fate.quoted() ? 1 : 0, fate.taken() ? 1 : 0, fate.collected() ? 1 : 0,
                fate.taken() ? fate.total().orElse(BigDecimal.ZERO) : BigDecimal.ZERO);
    }

    private static Day past(LocalDate day, String measure, BigDecimal amount) {
        int many = measure.equals("SUM") ? 0 : amount.intValueExact();
        return switch (measure) {
            case "CONSULTATIONS" -> new Day(day, many, 0, 0, 0, 0, 0, BigDecimal.ZERO);
            case "PLANNED" -> new Day(day, 0, many, 0, 0, 0, 0, BigDecimal.ZERO);
            case "CLASHED" -> new Day(day, 0, 0, many, 0, 0, 0, BigDecimal.ZERO);
            case "QUOTED" -> new Day(day, 0, 0, 0, many, 0, 0, BigDecimal.ZERO);
            case "TAKEN" -> new Day(day, 0, 0, 0, 0, many, 0, BigDecimal.ZERO);
            case "COLLECTED" -> new Day(day, 0, 0, 0, 0, 0, many, BigDecimal.ZERO);
            case "SUM" -> new Day(day, 0, 0, 0, 0, 0, 0, amount);
            default -> throw new IllegalStateException("no measure " + measure);
        };
    }

    /** Adds what became of a consultation to the sums of its day, before it is forgotten, in the same transaction. */
    void rememberOf(String code) {
        fates.of(code).ifPresent(fate -> {
            Day day = day(fate);
            add(day.day(), "CONSULTATIONS", ALL, BigDecimal.ONE);
            add(day.day(), "PLANNED", ALL, BigDecimal.valueOf(day.planned()));
            add(day.day(), "CLASHED", ALL, BigDecimal.valueOf(day.clashed()));
            add(day.day(), "QUOTED", ALL, BigDecimal.valueOf(day.quoted()));
            add(day.day(), "TAKEN", ALL, BigDecimal.valueOf(day.taken()));
            add(day.day(), "COLLECTED", ALL, BigDecimal.valueOf(day.collected()));
            add(day.day(), "SUM", ALL, day.sum());
            fates.products(code).forEach(row -> add(day.day(), text(row, "what"), text(row, "sku"), BigDecimal.ONE));
        });
    }

    private void add(LocalDate day, String measure, String sku, BigDecimal amount) {
        if (amount.signum() == 0) {
            return;
        }
        if (more(day, measure, sku, amount) == 0) {
            try {
                database.sql("insert into past_day (on_day, measure, sku, amount) values (:day, :measure, :sku, :amount)").param("day", day).param("measure", measure)
                        .param("sku", sku).param("amount", amount).update();
            } catch (DuplicateKeyException another) {
                throw new IllegalStateException("two kiosks forget at once; the next time will do", another);
            }
        }
    }

    private int more(LocalDate day, String measure, String sku, BigDecimal amount) {
        return database.sql("update past_day set amount = amount + :amount where on_day = :day and measure = :measure and sku = :sku").param("amount", amount)
                .param("day", day).param("measure", measure).param("sku", sku).update();
    }
}
