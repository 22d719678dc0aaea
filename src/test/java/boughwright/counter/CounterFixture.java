package boughwright.counter;

import boughwright.HandClock;
import boughwright.catalogue.CatalogueFixture;
import boughwright.shelf.Reservations;
import boughwright.shelf.Shelf;
import boughwright.shelf.ShelfFixture;
import boughwright.storage.Changes;
import boughwright.storage.Databases;
import boughwright.storage.Settling;
import boughwright.storage.Transactions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** The counter of a shop with the demo season on its shelf, in a database of its own, with a clock that is set by hand. */
final class CounterFixture {

    final HandClock clock = new HandClock("2026-12-05T14:00:00Z");
    final JdbcClient database;
    final Shelf shelf;
    final Reservations reservations;
    final Transactions transactions;
    final Settling settling;
    final Deeds deeds;
    final Blocked blocked;
    final Holds holds;
    final ShopTerms terms;
    final FigureBooks figures;

    CounterFixture(Databases databases) {
        this(databases.fresh());
    }

    CounterFixture(DataSource source) {
        database = JdbcClient.create(source);
        TransactionTemplate transaction = new TransactionTemplate(new DataSourceTransactionManager(source));
        transactions = new Transactions(transaction);
        settling = new Settling(database, source);
        Changes changes = new Changes(database);
        shelf = ShelfFixture.shelf(source, changes, clock);
        reservations = ShelfFixture.reservations(source, changes, shelf);
        deeds = new Deeds(database, transactions, clock);
        blocked = new Blocked(database, clock);
        holds = new Holds(database, transactions, reservations, blocked, deeds, settling, clock);
        terms = new ShopTerms(database, transaction, settling, clock);
        figures = new FigureBooks(database, new Fates(database, clock), clock);
        try {
            shelf.open(() -> CatalogueFixture.LOOKS, CatalogueFixture.USD, Files.readString(Path.of("catalogue-samples/season.csv")));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A consultation that is begun now. */
    String consultation(String code) {
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
        database.sql("""
                        insert into consultation (code, begun_at, touched_at, nickname, language, units, question, answers)
                        values (:code, :now, :now, '', 'en', 'feet', '', '')""").param("code", code).param("now", now).update();
        return code;
    }

    /** Of some product with enough of it in stock. @param which counts from 0 */
    Pack pack(int which, int packs) {
        return shelf.onSale().stream().filter(p -> p.stock() > 20).skip(which).findFirst().map(p -> new Pack(p.sku(), p.name(), p.shelf(), packs)).orElseThrow();
    }

    int onHand(Pack pack) {
        return database.sql("select on_hand from stock where sku = :sku").param("sku", pack.sku()).query(Integer.class).single();
    }

    int held(Pack pack) {
        return database.sql("select held from stock where sku = :sku").param("sku", pack.sku()).query(Integer.class).single();
    }

    /** Every product's promises add up to what is held of it. */
    List<String> unbalanced() {
        return database.sql("""
                        select s.sku from stock s left join (select sku, sum(packs) as packs from reserved group by sku) r on r.sku = s.sku
                        where s.held <> coalesce(r.packs, 0)""").query(String.class).list();
    }
}
