package boughwright.rulebook;

import boughwright.text.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What the shop's rule files must keep to beyond the language itself, checked on their texts before the engine sees them: named as rule
 * files, in the package, with imports that exist, every rule with an id and a sentence of its own, and rules that only add findings.
 */
final class DrlHouseStyle {

    /** The package that every rule file declares. */
    static final String PACKAGE = "boughwright.rules";

    private static final Pattern IMPORT = Pattern.compile("(?m)^\\s*import\\s+(?!static\\b|function\\b)([\\w.$]+)\\s*;?");
    private static final Map<Pattern, String> REFUSED = refused();

    private final ClassLoader classes;

    DrlHouseStyle(ClassLoader classes) {
        this.classes = classes;
    }

    List<RulebookFault> check(List<DrlSource> sources) {
        var faults = new ArrayList<RulebookFault>();
        for (var source : sources) {
            checkFile(source, faults);
            for (var rule : source.rules()) {
                checkRule(source, rule, faults);
            }
        }
        checkIdsAreUnique(sources, faults);
        return faults;
    }

    private void checkFile(DrlSource source, List<RulebookFault> faults) {
        // The engine passes over a file whose ending it does not know without a word.
        if (!source.file().endsWith(".drl")) {
            faults.add(RulebookFault.ofFile(source.file(), 0, Text.of("rulebook.drl.ending")));
        }
        if (!source.packageName().equals(PACKAGE)) {
            faults.add(RulebookFault.ofFile(source.file(), 1, Text.of("rulebook.drl.package", PACKAGE)));
        }
        if (source.rules().isEmpty()) {
            faults.add(RulebookFault.ofFile(source.file(), 0, Text.of("rulebook.drl.empty")));
        }
        var imports = IMPORT.matcher(source.header());
        while (imports.find()) {
            var name = imports.group(1);
            if (!name.endsWith(".") && !exists(name)) {
                faults.add(RulebookFault.ofFile(source.file(), DrlSource.lineAt(source.text(), imports.start(1)),
                        Text.of("rulebook.drl.import", name)));
            }
        }
    }

    private static void checkRule(DrlSource source, DrlSource.Rule rule, List<RulebookFault> faults) {
        if (RuleName.read(rule.name()).isEmpty()) {
            faults.add(RulebookFault.ofRule(source.file(), rule.line(), rule.name(),
                    Text.of("rulebook.drl.name")));
        }
        var bare = source.bare(rule);
        REFUSED.forEach((pattern, key) -> {
            var found = pattern.matcher(bare);
            if (found.find()) {
                int line = DrlSource.lineAt(source.text(), rule.start() + found.start());
                faults.add(RulebookFault.ofRule(source.file(), line, rule.name(), Text.of(key)));
            }
        });
    }

    private static void checkIdsAreUnique(List<DrlSource> sources, List<RulebookFault> faults) {
        var firstUse = new HashMap<String, String>();
        for (var source : sources) {
            for (var rule : source.rules()) {
                RuleName.read(rule.name()).ifPresent(name -> {
                    var place = Text.of("rulebook.drl.place", source.file(), String.valueOf(rule.line()));
                    var first = firstUse.putIfAbsent(name.id(), place);
                    if (first != null) {
                        faults.add(RulebookFault.ofRule(source.file(), rule.line(), rule.name(),
                                Text.of("rulebook.drl.twice", name.id(), first)));
                    }
                });
            }
        }
    }

    private boolean exists(String className) {
        try {
            Class.forName(className, false, classes);
            return true;
        } catch (ClassNotFoundException | NoClassDefFoundError absent) {
            return false;
        }
    }

    private static Map<Pattern, String> refused() {
        var words = new TreeMap<String, String>();
        words.put("\\b(?:modify|update|delete|retract)\\s*\\(", "rulebook.drl.changes");
        words.put("\\bsalience\\b", "rulebook.drl.salience");
        words.put("\\bextends\\b", "rulebook.drl.extends");
        return words.entrySet().stream().collect(Collectors.toMap(e -> Pattern.compile(e.getKey()), Map.Entry::getValue));
    }
}
