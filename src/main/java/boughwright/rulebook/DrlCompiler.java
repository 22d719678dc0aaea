package boughwright.rulebook;

import boughwright.text.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.Message;

/**
 * Turns the texts of a rulebook's rule files into rules that can be run.
 *
 * <p>Compiles in memory and leaves nothing behind in the engine's repository, so editions can be compiled again and again. Faults that an
 * author can make are returned, never thrown. The result does not depend on the order of the map. Several threads may compile at once.
 */
public final class DrlCompiler {

    private static final AtomicLong BUILDS = new AtomicLong();

    /**
     * Compiles all files as one rulebook.
     *
     * @param texts the text of each file by its path, such as {@code style/ribbon.drl}
     */
    public DrlCompilation compile(Map<String, String> texts) {
        return EngineLoader.during(() -> compiled(texts));
    }

    private DrlCompilation compiled(Map<String, String> texts) {
        var sources = new TreeMap<>(texts).entrySet().stream().map(file -> DrlSource.read(file.getKey(), file.getValue())).toList();
        var faults = new DrlHouseStyle(EngineLoader.CLASSES).check(sources);
        if (!faults.isEmpty()) {
            return new DrlCompilation.Faulty(faults);
        }
        var build = build(sources.stream().collect(Collectors.toMap(DrlSource::file, DrlSource::text, (a, b) -> a, TreeMap::new)));
        if (!build.errors().isEmpty()) {
            return new DrlCompilation.Faulty(place(sources, build.errors()));
        }
        var missing = missing(sources, build.rules());
        return missing.isEmpty() ? new DrlCompilation.Sound(new StyleRules(build.base(), build.rules())) : new DrlCompilation.Faulty(missing);
    }

    private record Problem(String file, int line, String text) {
    }

    private record Build(KieBase base, Set<String> rules, List<Problem> errors) {
    }

    private Build build(TreeMap<String, String> texts) {
        var kie = KieServices.get();
        // The engine keeps compiled modules by this id: a fresh one each time, or the former edition would be handed out again.
        var id = kie.newReleaseId("boughwright", "rulebook", "0." + BUILDS.incrementAndGet());
        // Conditions stay inside their rule's class: one class for each of them took more than twice as long to compile.
        var settings = kie.newKieModuleModel().setConfigurationProperty("drools.externaliseCanonicalModelLambda", "false");
        var files = kie.newKieFileSystem().generateAndWritePomXML(id).writeKModuleXML(settings.toXML());
        var paths = new TreeMap<String, String>();
        texts.forEach((path, text) -> {
            var place = DrlHouseStyle.PACKAGE.replace('.', '/') + "/" + paths.size() + "-" + path.substring(path.lastIndexOf('/') + 1);
            paths.put(place, path);
            files.write("src/main/resources/" + place, ascii(text));
        });
        try {
            var results = kie.newKieBuilder(files, EngineLoader.CLASSES).buildAll(ExecutableModelProject.class).getResults();
            var errors = results.getMessages(Message.Level.ERROR).stream().map(message -> problem(message, paths)).toList();
            if (!errors.isEmpty()) {
                return new Build(null, Set.of(), errors);
            }
            var base = kie.newKieContainer(id, EngineLoader.CLASSES).getKieBase();
            var rules = base.getKiePackages().stream()
                    .flatMap(loaded -> loaded.getRules().stream())
                    .map(rule -> rule.getName())
                    .collect(Collectors.toCollection(TreeSet::new));
            return new Build(base, rules, List.of());
        } catch (RuntimeException broken) {
            // Some mistakes make the engine itself fail instead of reporting them.
            return new Build(null, Set.of(), List.of(new Problem("", 0, String.valueOf(broken.getMessage()))));
        } finally {
            kie.getRepository().removeKieModule(id);
        }
    }

    /**
     * The text with every other character as a Java escape: the engine hands it through the machine's own character set, which on a
     * bare server is often not UTF-8.
     */
    private static String ascii(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        text.chars().forEach(c -> plain.append(c < 128 ? String.valueOf((char) c) : String.format(Locale.ROOT, "\\u%04x", c)));
        return plain.toString();
    }

    private static Problem problem(Message message, Map<String, String> paths) {
        var file = paths.getOrDefault(String.valueOf(message.getPath()).replaceFirst("^src/main/resources/", ""), "");
        return new Problem(file, file.isEmpty() ? 0 : Math.max(0, message.getLine()), message.getText());
    }

    /**
     * Errors with a line are placed as they are. The others (an unknown field, a consequence that is not Java) name no rule, and often
     * only the first is told: then each file is compiled by itself, and of a faulty file each rule.
     */
    private List<RulebookFault> place(List<DrlSource> sources, List<Problem> problems) {
        var faults = new ArrayList<RulebookFault>();
        var byFile = sources.stream().collect(Collectors.toMap(DrlSource::file, source -> source));
        for (var problem : problems) {
            if (problem.line() > 0) {
                var rule = byFile.get(problem.file()).ruleAt(problem.line());
                faults.add(RulebookFault.ofRule(problem.file(), problem.line(), rule == null ? "" : rule.name(), EngineWords.plain(problem.text())));
            }
        }
        if (faults.isEmpty()) {
            sources.stream().filter(source -> !build(new TreeMap<>(Map.of(source.file(), source.text()))).errors().isEmpty())
                    .forEach(source -> source.rules().forEach(rule -> compileAlone(source, rule, faults)));
        }
        if (faults.isEmpty()) {
            problems.forEach(problem -> faults.add(RulebookFault.ofFile(problem.file(), problem.line(), EngineWords.plain(problem.text()))));
        }
        return faults;
    }

    private void compileAlone(DrlSource source, DrlSource.Rule rule, List<RulebookFault> faults) {
        build(new TreeMap<>(Map.of(source.file(), source.only(rule)))).errors().stream()
                .filter(problem -> !EngineWords.isEcho(problem.text()))
                .limit(1)
                .forEach(problem -> {
                    int line = problem.line() > 0 ? problem.line() : source.lineOf(rule, EngineWords.quoted(problem.text()));
                    faults.add(RulebookFault.ofRule(source.file(), line, rule.name(), EngineWords.plain(problem.text())));
                });
    }

    /** What the files declare and the engine did not load: the engine itself passes over what it does not recognise. */
    static List<RulebookFault> missing(List<DrlSource> sources, Set<String> loaded) {
        var faults = new ArrayList<RulebookFault>();
        int declared = 0;
        for (var source : sources) {
            for (var rule : source.rules()) {
                declared++;
                if (!loaded.contains(rule.name())) {
                    faults.add(RulebookFault.ofRule(source.file(), rule.line(), rule.name(), Text.of("rulebook.drl.unloaded")));
                }
            }
        }
        if (faults.isEmpty() && declared != loaded.size()) {
            faults.add(RulebookFault.ofFile(sources.get(0).file(), 0,
                    Text.of("rulebook.drl.count", loaded.size(), declared)));
        }
        return faults;
    }
}
