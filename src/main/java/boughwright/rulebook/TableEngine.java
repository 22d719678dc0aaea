package boughwright.rulebook;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.kie.api.io.Resource;
import org.kie.dmn.api.core.DMNMessage;
import org.kie.dmn.api.core.DMNModel;
import org.kie.dmn.api.core.DMNRuntime;
import org.kie.dmn.api.core.event.AfterEvaluateDecisionTableEvent;
import org.kie.dmn.api.core.event.DMNRuntimeEventListener;
import org.kie.dmn.core.internal.utils.DMNRuntimeBuilder;
import org.kie.internal.io.ResourceFactory;

/**
 * The decision engine loaded with one edition's table files. Any number of threads may evaluate at once: what an evaluation records
 * travels in its own context.
 */
final class TableEngine {

    private static final String HITS = "boughwright.rulebook.hits";

    private final DMNRuntime runtime;
    private final Map<String, DMNModel> modelOf = new HashMap<>();

    /**
     * What came of one evaluation.
     *
     * @param rows     rows that gave the answer, counted from 1
     * @param values   outputs by name; a value may be null when a cell gave nothing
     * @param problems the engine's messages; the other parts mean nothing unless this is empty
     */
    record Evaluation(List<Integer> rows, Map<String, Object> values, List<String> problems) {
    }

    private TableEngine(DMNRuntime runtime, List<TableReader.TableFile> files) {
        this.runtime = runtime;
        runtime.addListener(new RowListener());
        files.forEach(file -> modelOf.put(file.file(), runtime.getModel(file.namespace(), file.model())));
    }

    /** Loads files that have passed every check that needs no evaluation. */
    static TableEngine load(List<TableReader.TableFile> files) {
        var resources = files.stream().map(file -> resource(file)).toList();
        var runtime = DMNRuntimeBuilder.fromDefaults()
                .setRootClassLoader(EngineLoader.CLASSES)
                .buildConfiguration()
                .fromResources(resources)
                .getOrElseThrow(broken -> new IllegalStateException("checked tables could not be loaded", broken));
        return new TableEngine(runtime, files);
    }

    private static Resource resource(TableReader.TableFile file) {
        return ResourceFactory.newReaderResource(new StringReader(file.text())).setSourcePath(file.file());
    }

    Evaluation evaluate(WrittenTable table, Map<String, ?> inputs) {
        var context = runtime.newContext();
        inputs.forEach(context::set);
        var hits = new ArrayList<Integer>();
        context.getMetadata().set(HITS, hits);
        var result = runtime.evaluateByName(modelOf.get(table.file()), context, table.name());
        var problems = result.getMessages().stream()
                .filter(message -> message.getSeverity() != DMNMessage.Severity.INFO)
                .map(DMNMessage::getText)
                .toList();
        var value = result.getDecisionResultByName(table.name()).getResult();
        return new Evaluation(List.copyOf(hits), values(table, value), problems);
    }

    private static Map<String, Object> values(WrittenTable table, Object value) {
        var values = new LinkedHashMap<String, Object>();
        if (table.outputs().size() == 1) {
            values.put(table.name(), value);
        } else if (value instanceof Map<?, ?> several) {
            table.outputs().forEach(output -> values.put(output.name(), several.get(output.name())));
        }
        return values;
    }

    /** Notes the chosen rows in the list that the evaluation's own context carries, and so never in another thread's. */
    private static final class RowListener implements DMNRuntimeEventListener {
        @Override
        @SuppressWarnings("unchecked")
        public void afterEvaluateDecisionTable(AfterEvaluateDecisionTableEvent event) {
            var hits = (List<Integer>) event.getResult().getContext().getMetadata().get(HITS);
            hits.addAll(event.getSelected());
        }
    }
}
