package boughwright.storage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.Base64;

/** A value of a table as JSON, the same for each kind of database. Times are ISO 8601, bytes Base64, decimals text. */
final class Cell {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private Cell() {
    }

    /** @param type one of {@link Types}, of the column */
    static JsonNode read(ResultSet row, int column, int type) throws SQLException {
        JsonNode value = switch (type) {
            case Types.SMALLINT, Types.INTEGER, Types.BIGINT -> JSON.numberNode(row.getLong(column));
            case Types.BOOLEAN, Types.BIT -> JSON.booleanNode(row.getBoolean(column));
            case Types.DOUBLE, Types.FLOAT, Types.REAL -> JSON.numberNode(row.getDouble(column));
            case Types.NUMERIC, Types.DECIMAL -> text(row.getBigDecimal(column));
            case Types.DATE -> text(row.getObject(column, LocalDate.class));
            case Types.TIMESTAMP -> text(row.getObject(column, LocalDateTime.class));
            case Types.TIMESTAMP_WITH_TIMEZONE -> text(row.getObject(column, OffsetDateTime.class));
            case Types.BINARY, Types.VARBINARY, Types.LONGVARBINARY, Types.BLOB -> bytes(row.getBytes(column));
            case Types.CHAR, Types.VARCHAR, Types.LONGVARCHAR, Types.CLOB -> text(row.getString(column));
            default -> throw new IllegalStateException("a column of type " + type + " cannot be copied yet");
        };
        return row.wasNull() ? JSON.nullNode() : value;
    }

    private static JsonNode text(Object value) {
        return value == null ? JSON.nullNode() : JSON.textNode(value.toString());
    }

    private static JsonNode bytes(byte[] bytes) {
        return bytes == null ? JSON.nullNode() : JSON.textNode(Base64.getEncoder().encodeToString(bytes));
    }

    /** Writes what {@link #read} has read, into a column that may be of another database. */
    static void write(PreparedStatement row, int column, int type, JsonNode value) throws SQLException {
        if (value.isNull()) {
            row.setNull(column, type);
            return;
        }
        switch (type) {
            case Types.SMALLINT, Types.INTEGER, Types.BIGINT -> row.setLong(column, value.longValue());
            case Types.BOOLEAN, Types.BIT -> row.setBoolean(column, value.booleanValue());
            case Types.DOUBLE, Types.FLOAT, Types.REAL -> row.setDouble(column, value.doubleValue());
            case Types.NUMERIC, Types.DECIMAL -> row.setBigDecimal(column, new java.math.BigDecimal(value.textValue()));
            case Types.DATE -> row.setObject(column, LocalDate.parse(value.textValue()));
            case Types.TIMESTAMP -> row.setObject(column, LocalDateTime.parse(value.textValue()));
            case Types.TIMESTAMP_WITH_TIMEZONE -> row.setObject(column, OffsetDateTime.parse(value.textValue()));
            case Types.BINARY, Types.VARBINARY, Types.LONGVARBINARY, Types.BLOB -> row.setBytes(column, Base64.getDecoder().decode(value.textValue()));
            case Types.CHAR, Types.VARCHAR, Types.LONGVARCHAR, Types.CLOB -> row.setString(column, value.textValue());
            default -> throw new IllegalStateException("a column of type " + type + " cannot be restored yet");
        }
    }
}
