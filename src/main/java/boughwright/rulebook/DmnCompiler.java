package boughwright.rulebook;

import static org.kie.dmn.validation.DMNValidator.Validation.ANALYZE_DECISION_TABLE;
import static org.kie.dmn.validation.DMNValidator.Validation.VALIDATE_COMPILATION;
import static org.kie.dmn.validation.DMNValidator.Validation.VALIDATE_MODEL;
import static org.kie.dmn.validation.DMNValidator.Validation.VALIDATE_SCHEMA;

import boughwright.text.Text;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.kie.dmn.validation.DMNValidatorFactory;

/**
 * Turns the texts of a rulebook's decision-table files into tables that can be asked.
 *
 * <p>Four checks, each only when the former found nothing: the file's shape, each cell by itself, the engine's validation with its search
 * for gaps and overlaps, and one question to every row. Faults are returned, never thrown. The result does not depend on the order of the
 * map. Several threads may compile at once.
 */
public final class DmnCompiler {

    /**
     * Compiles all files as one rulebook.
     *
     * @param texts the text of each file by its path, such as {@code sizing/topper.dmn}
     */
    public DmnCompilation compile(Map<String, String> texts) {
        return EngineLoader.during(() -> compiled(texts));
    }

    /**
     * Reads a file without asking its tables anything: the engine never sees it. What is wrong with its shape or its cells is added to
     * {@code faults}; empty when nothing of it can be read.
     */
    public static Optional<WrittenFile> read(String path, String text, List<RulebookFault> faults) {
        var read = TableReader.read(path, text, faults);
        var cells = new CellCheck(faults);
        read.ifPresent(file -> file.tables().forEach(cells::check));
        return read.map(file -> new WrittenFile(path, file.model(), file.description(), file.tables()));
    }

    private DmnCompilation compiled(Map<String, String> texts) {
        var faults = new ArrayList<RulebookFault>();
        var files = new ArrayList<TableReader.TableFile>();
        new TreeMap<>(texts).forEach((path, text) -> TableReader.read(path, text, faults).ifPresent(files::add));
        checkNamesAreUnique(files, faults);
        if (faults.isEmpty()) {
            var cells = new CellCheck(faults);
            files.forEach(file -> file.tables().forEach(cells::check));
        }
        if (faults.isEmpty()) {
            validate(files, faults);
        }
        if (!faults.isEmpty()) {
            return new DmnCompilation.Faulty(faults);
        }
        var engine = TableEngine.load(files);
        var probe = new RowProbe(engine, faults);
        files.forEach(file -> file.tables().forEach(probe::check));
        return faults.isEmpty() ? new DmnCompilation.Sound(new DmnTables(engine, files)) : new DmnCompilation.Faulty(faults);
    }

    /** The engine knows a file by its namespace and name, and would let one file shadow another. */
    private static void checkNamesAreUnique(List<TableReader.TableFile> files, List<RulebookFault> faults) {
        var firstUse = new HashMap<String, String>();
        for (var file : files) {
            var first = firstUse.putIfAbsent(file.namespace() + "#" + file.model(), file.file());
            if (first != null) {
                faults.add(RulebookFault.ofFile(file.file(), 1, Text.of("rulebook.dmn.same", first, file.model())));
            }
        }
    }

    private static void validate(List<TableReader.TableFile> files, List<RulebookFault> faults) {
        var validator = DMNValidatorFactory.newValidator(EngineLoader.CLASSES, List.of());
        try {
            for (var file : files) {
                var known = new TableFaults(file, faults);
                validator.validate(new StringReader(file.text()), VALIDATE_SCHEMA, VALIDATE_MODEL, VALIDATE_COMPILATION, ANALYZE_DECISION_TABLE)
                        .forEach(known::add);
            }
        } finally {
            validator.dispose();
        }
    }
}
