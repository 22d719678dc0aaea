package boughwright.publishing;

import boughwright.HandClock;
import boughwright.house.HouseRules;
import boughwright.proposal.ProposalWatch;
import boughwright.shelf.ShelfFixture;
import boughwright.storage.Changes;
import boughwright.storage.Settling;
import boughwright.storage.Transactions;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.UUID;
import java.util.function.UnaryOperator;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcConnectionPool;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** A shop with its editions in a database in memory and a clock that stands still until it is moved. */
final class OpenShop {

    final HandClock clock;
    final Changes changes;
    final Editions editions;
    final ShopDoor shop;
    final Drafts drafts;
    final References references;
    final Publisher publisher;
    final Rehearsals rehearsals;
    private final DataSource source;

    private OpenShop(DataSource source, HandClock clock, String rules) {
        this.source = source;
        this.clock = clock;
        JdbcClient database = JdbcClient.create(source);
        Settling settling = new Settling(database, source);
        changes = new Changes(database);
        Transactions transactions = new Transactions(new TransactionTemplate(new DataSourceTransactionManager(source)));
        editions = new Editions(database, transactions, changes, settling, clock);
        shop = new ShopDoor(rules, "", editions, ShelfFixture.shelf(source, changes, clock), ProposalWatch.NONE);
        drafts = new Drafts(database, transactions, settling, clock);
        references = new References(database, editions);
        publisher = new Publisher(shop, editions, drafts, references);
        rehearsals = new Rehearsals(shop);
    }

    static OpenShop open() {
        return open("");
    }

    /** With its database in a file, as a kiosk has it. */
    static OpenShop onDisk(Path folder) {
        return open("", "jdbc:h2:file:" + folder.toAbsolutePath().resolve("shop") + ";WRITE_DELAY=0");
    }

    /** @param rules folder of the rulebook; empty for the one that ships */
    static OpenShop open(String rules) {
        return open(rules, "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
    }

    private static OpenShop open(String rules, String address) {
        DataSource source = JdbcConnectionPool.create(address, "sa", "");
        Flyway.configure().dataSource(source).load().migrate();
        return new OpenShop(source, new HandClock("2026-11-25T10:00:00Z"), rules);
    }

    /** The same shop opened again, as after a restart. */
    OpenShop again(String rules) {
        return new OpenShop(source, clock, rules);
    }

    JdbcClient database() {
        return JdbcClient.create(source);
    }

    /** Rewrites what is kept of an edition, as a later version of the kiosk might find it. */
    void spoil(int edition, String part, String other) {
        KeptEdition kept = editions.edition(edition).orElseThrow();
        java.util.SortedMap<String, String> texts = new java.util.TreeMap<>(kept.texts());
        texts.replaceAll((path, text) -> text.replace(part, other));
        database().sql("update edition set texts = :texts where number = :number").param("texts", Editions.packed(texts)).param("number", edition).update();
    }

    HouseRules live() {
        return publisher.rules(shop.liveEdition());
    }

    /** More rolls of body ribbon on trees from 8 to 10 ft, which usual practice does not know. */
    static HouseRules moreRibbon(HouseRules rules, String rolls) {
        return changed(rules, "body-ribbon", 3, rolls);
    }

    static HouseRules changed(HouseRules rules, String topic, int row, String number) {
        return rules.changeGrid(topic, "Base", g -> g.change(row, r -> r.withResult(0, number)));
    }

    Publisher.Outcome publish(String title, UnaryOperator<HouseRules> change) {
        return publish(title, change, editions.today(), true, "");
    }

    Publisher.Outcome publish(String title, UnaryOperator<HouseRules> change, LocalDate startsOn, boolean acknowledged, String override) {
        return publisher.publish(change.apply(live()), shop.liveEdition(), new Publisher.Wish(title, "A note", "Ada", startsOn, acknowledged, override));
    }
}
