package boughwright.rulebook;

import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.stream.Collectors;

/**
 * The decision tables of one rulebook edition, ready to be asked. Immutable; any number of threads may ask at once.
 */
public final class DmnTables {

    private final TableEngine engine;
    private final List<WrittenTable> tables;
    private final Map<String, String> titles;

    DmnTables(TableEngine engine, List<TableReader.TableFile> files) {
        this.engine = engine;
        this.tables = files.stream().flatMap(file -> file.tables().stream()).toList();
        this.titles = files.stream().collect(Collectors.toMap(TableReader.TableFile::file, TableReader.TableFile::model));
    }

    /** The name that a file gives itself, such as "Rolls of body ribbon". */
    public String title(String file) {
        return titles.get(file);
    }

    /** All tables, by file and then in the order of the file. */
    public List<WrittenTable> tables() {
        return tables;
    }

    /**
     * The table of that name as it is written.
     *
     * @throws NoSuchElementException when the file has no such table
     */
    public WrittenTable table(String file, String name) {
        return tables.stream()
                .filter(table -> table.file().equals(file) && table.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("no table " + name + " in " + file));
    }

    /**
     * Asks one table. Inputs that the table does not use are passed over.
     *
     * @param inputs by name: a number (in the unit of the table's column), a {@link String} or a {@link Boolean}
     * @throws NoSuchElementException   when the file has no such table
     * @throws IllegalArgumentException when an input is missing or outside the allowed values
     * @throws IllegalStateException    when a checked table still gives no answer, such as a division by zero inside a row
     */
    public TableAnswer ask(String file, String name, Map<String, ?> inputs) {
        var table = table(file, name);
        // The engine lets a value that is not allowed through to any row that says "-".
        for (var input : table.inputs()) {
            var value = inputs.get(input.name());
            if (!input.allows(value)) {
                throw new IllegalArgumentException(
                        "table " + name + " of " + file + " allows a " + input.name() + " " + input.allowed() + ", not " + value);
            }
        }
        var evaluation = EngineLoader.during(() -> engine.evaluate(table, inputs));
        if (!evaluation.problems().isEmpty() || evaluation.rows().size() != 1) {
            throw new IllegalStateException("table " + name + " of " + file + " does not answer for " + inputs + ": " + evaluation.problems());
        }
        var row = table.rows().get(evaluation.rows().get(0) - 1);
        return new TableAnswer(file, name, row.number(), table.reason(row), evaluation.values());
    }
}
