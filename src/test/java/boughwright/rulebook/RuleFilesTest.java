package boughwright.rulebook;

import static boughwright.rulebook.SampleTexts.RULES;
import static boughwright.rulebook.SampleTexts.SAFETY;
import static boughwright.rulebook.SampleTexts.STYLE;
import static boughwright.rulebook.SampleTexts.lineOf;
import static boughwright.rulebook.SampleTexts.with;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kie.api.KieServices;

class RuleFilesTest {

    @Test
    void every_declared_rule_is_there_by_its_id_and_sentence() {
        DrlCompilation.Sound sound = (DrlCompilation.Sound) new DrlCompiler().compile(RULES);
        assertThat(sound.rules().names()).extracting(RuleName::id).containsExactly("C-01", "C-02", "C-03", "S-01", "S-02", "S-03");
        assertThat(sound.rules().names().first().sentence()).isEqualTo("A cat that swallows tinsel can fall seriously ill, so the kit holds none");
    }

    @Test
    void a_build_can_be_repeated_and_leaves_no_module_behind() {
        DrlCompiler compiler = new DrlCompiler();
        for (int i = 0; i < 2; i++) {
            assertThat(compiler.compile(RULES)).isInstanceOf(DrlCompilation.Sound.class);
        }
        KieServices kie = KieServices.get();
        for (int build = 1; build < 100; build++) {
            assertThat(kie.getRepository().getKieModule(kie.newReleaseId("boughwright", "rulebook", "0." + build))).isNull();
        }
    }

    @Test
    void a_syntax_error_is_named_by_file_line_and_rule() {
        RulebookFault fault = onlyFault(with(RULES, STYLE, "height.feet() > 7 )", "height.feet() > 7 "));
        assertThat(fault.file()).isEqualTo(STYLE);
        assertThat(fault.line()).isEqualTo(lineOf(RULES.get(STYLE), "then"));
        assertThat(fault.part()).startsWith("S-01: ");
        assertThat(fault.message()).startsWith("The rule cannot be read here: ");
    }

    @Test
    void an_unknown_field_is_named_by_rule_and_line() {
        Map<String, String> spoilt = with(RULES, SAFETY, "Room( nearHeat )", "Room( nearestHeat < 0.9 )");
        assertThat(onlyFault(spoilt)).isEqualTo(new RulebookFault(SAFETY, lineOf(spoilt.get(SAFETY), "nearestHeat"),
                "C-03: A real tree dries out beside a source of heat", List.of(),
                "The condition \"nearestHeat < 0.9\" asks for something that this kind of fact does not have."));
    }

    @Test
    void faults_of_several_rules_in_several_files_are_all_told_in_file_order() {
        Map<String, String> spoilt = with(RULES, STYLE, "Fullness.SPARSE", "Fullness.SPARS");
        spoilt = with(spoilt, STYLE, "new Demand.DarkOne(Set.of(Role.FACE_FLOWER), 30.0)", "new Demand.DarkOne(30.0)");
        spoilt = with(spoilt, SAFETY, "Room( nearHeat )", "Room( nearestHeat < 0.9 )");
        List<RulebookFault> faults = faults(spoilt);
        assertThat(faults).extracting(fault -> fault.part().substring(0, 4)).containsExactly("C-03", "S-01", "S-02");
        assertThat(faults.get(1).message()).isEqualTo("The constructor Demand.DarkOne(double) is undefined");
        assertThat(faults.get(2).message()).isEqualTo("Fullness has no \"SPARS\".");
    }

    @ParameterizedTest
    @ValueSource(strings = {"safety/household.txt", "safety/household.DRL", "safety/household.drlx", "safety/household"})
    void a_file_that_the_engine_would_skip_is_a_fault(String name) {
        Map<String, String> renamed = new TreeMap<>(RULES);
        renamed.put(name, renamed.remove(SAFETY));
        assertThat(onlyFault(renamed)).isEqualTo(RulebookFault.ofFile(name, 0, "A rule file’s name must end in .drl, or its rules are never read."));
    }

    @Test
    void a_file_of_another_package_is_a_fault() {
        assertThat(onlyFault(with(RULES, SAFETY, "package boughwright.rules;", "package boughwright.ruless;")).message())
                .isEqualTo("The file must begin with \"package boughwright.rules;\".");
    }

    @Test
    void a_file_without_a_rule_is_a_fault() {
        Map<String, String> more = new TreeMap<>(RULES);
        more.put("style/empty.drl", "package boughwright.rules;\n");
        assertThat(onlyFault(more).message()).isEqualTo("The file holds no rule.");
    }

    @Test
    void an_import_of_nothing_is_named_by_its_line() {
        Map<String, String> spoilt = with(RULES, STYLE, "import boughwright.brief.Tree;", "import boughwright.brief.Treee;");
        assertThat(onlyFault(spoilt)).isEqualTo(RulebookFault.ofFile(STYLE, lineOf(spoilt.get(STYLE), "import boughwright.brief.Treee"),
                "The file imports boughwright.brief.Treee, which does not exist."));
    }

    @Test
    void an_id_used_twice_is_told_with_the_place_of_its_first_use() {
        assertThat(onlyFault(with(RULES, SAFETY, "C-02: ", "C-01: ")).message())
                .isEqualTo("The id C-01 is already used in " + SAFETY + ", line " + lineOf(RULES.get(SAFETY), "rule \"C-01") + ".");
    }

    @Test
    void a_rule_without_an_id_is_a_fault() {
        assertThat(onlyFault(with(RULES, SAFETY, "C-02: ", "")).message()).startsWith("A rule’s name is its id, a colon and a sentence");
    }

    @Test
    void a_rule_that_removes_facts_or_asks_for_an_order_is_a_fault() {
        RulebookFault fault = onlyFault(with(RULES, STYLE, "insert( new Demand.Prefer(Role.FILLER_BALL, Trait.FINISH, \"matte\", 0.5) );", "delete( $tree );"));
        assertThat(fault.message()).isEqualTo("A rule only adds findings: it must not change or remove a fact.");
        assertThat(fault.line()).isEqualTo(lineOf(RULES.get(STYLE), "insert( new Demand.Prefer"));
        String sparse = "when\n    Tree( fullness == Fullness.SPARSE )";
        assertThat(onlyFault(with(RULES, STYLE, sparse, "salience 10\n" + sparse)).message()).contains("salience");
    }

    @Test
    void words_in_comments_and_texts_are_not_taken_for_rules() {
        DrlSource source = DrlSource.read("a.drl", "// rule \"X\"\n/* rule \"Y\" */ rule \"S-01: the rule \\\"Z\\\" of salience\" when then foo('rule \"W\"'); end");
        assertThat(source.rules()).singleElement().satisfies(rule -> assertThat(rule.line()).isEqualTo(2));
    }

    private static RulebookFault onlyFault(Map<String, String> texts) {
        List<RulebookFault> faults = faults(texts);
        assertThat(faults).hasSize(1);
        return faults.get(0);
    }

    private static List<RulebookFault> faults(Map<String, String> texts) {
        DrlCompilation compiled = new DrlCompiler().compile(texts);
        assertThat(compiled).isInstanceOf(DrlCompilation.Faulty.class);
        return ((DrlCompilation.Faulty) compiled).faults();
    }
}
