package boughwright.rulebook;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * For each rule of the shipped rulebook facts over which it fires and facts, as near to them as may be, over which it does not: as
 * src/test/resources/rules/&lt;topic&gt;/cases.txt tell them.
 */
final class RuleCases {

    private static final String FILE = "cases.txt";

    private static final Pattern FORM = Pattern.compile("(?<id>[SC]-\\d{2,3}) (?<way>fires|silent) over: (?<facts>\\S.*)");

    /**
     * @param fires facts over which the rule concludes something
     * @param silent facts over which it does not
     */
    record Case(String id, List<?> fires, List<?> silent) {

        @Override
        public String toString() {
            return id;
        }
    }

    private record Told(CaseLine line, List<?> facts) {
    }

    private RuleCases() {
    }

    static List<Case> all() {
        return read(CaseLine.of(FILE));
    }

    static List<Case> of(String topic) {
        return read(CaseLine.of(FILE).stream().filter(line -> line.topic().equals(topic)).toList());
    }

    static List<Case> read(List<CaseLine> lines) {
        Map<String, Told> fires = new TreeMap<>();
        Map<String, Told> silent = new TreeMap<>();
        for (CaseLine line : lines) {
            Matcher parts = FORM.matcher(line.text());
            if (!parts.matches()) {
                throw line.fault("a case reads \"S-01 fires over: ...\" or \"S-01 silent over: ...\", not \"" + line.text() + "\"");
            }
            Map<String, Told> way = parts.group("way").equals("fires") ? fires : silent;
            if (way.put(parts.group("id"), new Told(line, SpokenFacts.read(parts.group("facts"), line))) != null) {
                throw line.fault("a second case of this kind for " + parts.group("id"));
            }
        }
        eachAlsoAmong(silent, fires, "is silent over some facts and fires over none");
        eachAlsoAmong(fires, silent, "fires over some facts and is silent over none");
        return fires.entrySet().stream().map(told -> new Case(told.getKey(), told.getValue().facts(), silent.get(told.getKey()).facts())).toList();
    }

    private static void eachAlsoAmong(Map<String, Told> some, Map<String, Told> others, String otherwise) {
        some.forEach((id, told) -> {
            if (!others.containsKey(id)) {
                throw told.line().fault(id + " " + otherwise);
            }
        });
    }
}
