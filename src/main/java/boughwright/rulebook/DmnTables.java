package boughwright.rulebook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * The decision tables of one rulebook edition, ready to be asked. Immutable; any number of threads may ask at once.
 */
public final class DmnTables {

    private final TableEngine engine;
    private final List<WrittenTable> tables;
    private final Map<String, String> titles;
    private final Map<Place, WrittenTable> byPlace;
    /** Consultations ask the same over and over: words that are few, heights at which rows begin, common heights of trees. */
    private final Map<Question, TableAnswer> answered = new ConcurrentHashMap<>();

    private static final int MOST_ANSWERED = 4_096;

    private record Place(String file, String table) {
    }

    private record Question(Place place, Map<String, Object> inputs) {
    }

    DmnTables(TableEngine engine, List<TableReader.TableFile> files) {
        this.engine = engine;
        this.tables = files.stream().flatMap(file -> file.tables().stream()).toList();
        this.byPlace = tables.stream().collect(Collectors.toMap(t -> new Place(t.file(), t.name()), t -> t, (first, second) -> first));
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
        WrittenTable table = byPlace.get(new Place(file, name));
        if (table == null) {
            throw new NoSuchElementException("no table " + name + " in " + file);
        }
        return table;
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
        var asked = new HashMap<String, Object>();
        for (var input : table.inputs()) {
            var value = inputs.get(input.name());
            asked.put(input.name(), value);
            if (!input.allows(value)) {
                throw new IllegalArgumentException(
                        "table " + name + " of " + file + " allows a " + input.name() + " " + input.allowed() + ", not " + value);
            }
        }
        var question = new Question(new Place(file, name), asked);
        var known = answered.get(question);
        if (known == null) {
            known = answer(table, asked);
            if (answered.size() < MOST_ANSWERED) {
                answered.put(question, known);
            }
        }
        return known;
    }

    private TableAnswer answer(WrittenTable table, Map<String, Object> inputs) {
        var evaluation = EngineLoader.during(() -> engine.evaluate(table, inputs));
        if (!evaluation.problems().isEmpty() || evaluation.rows().size() != 1) {
            throw new IllegalStateException("table " + table.name() + " of " + table.file() + " does not answer for " + inputs + ": " + evaluation.problems());
        }
        var row = table.rows().get(evaluation.rows().get(0) - 1);
        return new TableAnswer(table.file(), table.name(), row.number(), table.reason(row), evaluation.values());
    }
}
