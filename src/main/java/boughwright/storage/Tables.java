package boughwright.storage;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The tables of a database as they are, without those of the migrations. */
final class Tables {

    private static final String HISTORY = "flyway_schema_history";
    /** What every database has rows in from its beginning. */
    private static final Set<String> NEVER_EMPTY = Set.of("change_count", "people_setting", "shop_terms");

    private Tables() {
    }

    /**
     * A table.
     *
     * @param types by column, of {@link java.sql.Types}
     * @param counted the column whose numbers the database gives
     */
    record Table(String name, List<String> columns, List<Integer> types, Optional<String> counted) {

        /** The same with its columns in another order. */
        Table in(List<String> order) {
            return new Table(name, order, order.stream().map(c -> types.get(columns.indexOf(c))).toList(), counted);
        }
    }

    static boolean isH2(Connection connection) throws SQLException {
        return connection.getMetaData().getDatabaseProductName().equals("H2");
    }

    /** Those that others refer to come before them; otherwise by name. */
    static List<Table> in(Connection connection) throws SQLException {
        DatabaseMetaData meta = connection.getMetaData();
        Map<String, Table> tables = new TreeMap<>();
        Map<String, Set<String>> needs = new HashMap<>();
        try (ResultSet rows = meta.getTables(connection.getCatalog(), connection.getSchema(), "%", new String[] {"TABLE", "BASE TABLE"})) {
            while (rows.next()) {
                String name = rows.getString("TABLE_NAME");
                if (!name.equalsIgnoreCase(HISTORY)) {
                    tables.put(name.toLowerCase(Locale.ROOT), table(connection, name));
                    needs.put(name.toLowerCase(Locale.ROOT), needed(connection, name));
                }
            }
        }
        List<Table> order = new ArrayList<>();
        Set<String> placed = new TreeSet<>();
        tables.keySet().forEach(name -> place(name, tables, needs, placed, order));
        return order;
    }

    private static void place(String name, Map<String, Table> tables, Map<String, Set<String>> needs, Set<String> placed, List<Table> order) {
        if (placed.add(name)) {
            needs.get(name).forEach(needed -> place(needed, tables, needs, placed, order));
            order.add(tables.get(name));
        }
    }

    private static Table table(Connection connection, String name) throws SQLException {
        List<String> columns = new ArrayList<>();
        List<Integer> types = new ArrayList<>();
        Optional<String> counted = Optional.empty();
        try (ResultSet rows = connection.getMetaData().getColumns(connection.getCatalog(), connection.getSchema(), name, "%")) {
            while (rows.next()) {
                String column = rows.getString("COLUMN_NAME").toLowerCase(Locale.ROOT);
                columns.add(column);
                types.add(rows.getInt("DATA_TYPE"));
                if ("YES".equals(rows.getString("IS_AUTOINCREMENT"))) {
                    counted = Optional.of(column);
                }
            }
        }
        return new Table(name.toLowerCase(Locale.ROOT), columns, types, counted);
    }

    private static Set<String> needed(Connection connection, String name) throws SQLException {
        Set<String> needed = new TreeSet<>();
        try (ResultSet rows = connection.getMetaData().getImportedKeys(connection.getCatalog(), connection.getSchema(), name)) {
            while (rows.next()) {
                needed.add(rows.getString("PKTABLE_NAME").toLowerCase(Locale.ROOT));
            }
        }
        return needed;
    }

    /** Of the newest migration. */
    static String schemaVersion(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("select \"version\" from \"" + HISTORY + "\" where \"success\" and \"version\" is not null"
                        + " order by \"installed_rank\" desc")) {
            org.flywaydb.core.api.MigrationVersion newest = org.flywaydb.core.api.MigrationVersion.EMPTY;
            while (rows.next()) {
                org.flywaydb.core.api.MigrationVersion version = org.flywaydb.core.api.MigrationVersion.fromVersion(rows.getString(1));
                newest = version.compareTo(newest) > 0 ? version : newest;
            }
            return newest.getVersion();
        }
    }

    /** Whether anything is kept that somebody could miss. */
    static boolean holdsSomething(Connection connection) throws SQLException {
        for (Table table : in(connection)) {
            try (Statement statement = connection.createStatement();
                    ResultSet rows = statement.executeQuery("select count(*) from " + table.name())) {
                rows.next();
                if (rows.getLong(1) > 0 && !NEVER_EMPTY.contains(table.name())) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether others are connected to the database. Of a file in use H2 says so itself, by not opening it. */
    static boolean othersAtWork(Connection connection) throws SQLException {
        if (isH2(connection)) {
            return false;
        }
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("select count(*) from pg_stat_activity where datname = current_database()"
                        + " and backend_type = 'client backend' and pid <> pg_backend_pid()")) {
            rows.next();
            return rows.getLong(1) > 0;
        }
    }

    /** The next number that the database gives in a table is one that no row has. */
    static void goOnCounting(Table table, Connection connection) throws SQLException {
        if (table.counted().isEmpty()) {
            return;
        }
        String column = table.counted().get();
        long next;
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("select coalesce(max(" + column + "), 0) + 1 from " + table.name())) {
            rows.next();
            next = rows.getLong(1);
        }
        try (Statement statement = connection.createStatement()) {
            statement.execute("alter table " + table.name() + " alter column " + column + " restart with " + next);
        }
    }
}
