package boughwright.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.kie.api.KieServices;

class RuleFilesCompileTest {

    private static final String FULLNESS = "style/fullness.drl";
    private static final String HOUSEHOLD = "style/household.drl";
    private final Map<String, String> shipped = ShippedTexts.of(".drl");

    @Test
    void the_shipped_files_compile_and_every_declared_rule_is_there_by_id() {
        var sound = assertInstanceOf(DrlCompilation.Sound.class, new DrlCompiler().compile(shipped));
        assertEquals(List.of("C-01", "C-02", "C-03", "S-01", "S-02", "S-03"), sound.rules().names().stream().map(RuleName::id).toList());
        assertEquals("A cat that swallows tinsel can fall seriously ill, so the kit holds none", sound.rules().names().first().sentence());
    }

    @Test
    void a_build_leaves_no_module_behind_and_can_be_repeated() {
        var compiler = new DrlCompiler();
        for (int i = 0; i < 3; i++) {
            assertInstanceOf(DrlCompilation.Sound.class, compiler.compile(shipped));
        }
        var kie = KieServices.get();
        for (int build = 1; build < 100; build++) {
            assertNull(kie.getRepository().getKieModule(kie.newReleaseId("boughwright", "rulebook", "0." + build)));
        }
    }

    @Test
    void a_syntax_error_is_named_by_file_line_and_rule() {
        var spoilt = ShippedTexts.with(shipped, FULLNESS, "height > 2.1 )", "height > 2.1 ");
        var fault = onlyFault(spoilt);
        assertEquals(FULLNESS, fault.file());
        assertEquals(ShippedTexts.lineOf(shipped.get(FULLNESS), "then"), fault.line());
        assertTrue(fault.part().startsWith("S-01: "), fault.part());
        assertTrue(fault.message().startsWith("The rule cannot be read here: "), fault.message());
    }

    @Test
    void an_unknown_field_is_named_by_rule_and_line() {
        var spoilt = ShippedTexts.with(shipped, FULLNESS, "height > 2.1", "heigth > 2.1");
        var fault = onlyFault(spoilt);
        assertEquals(new RulebookFault(FULLNESS, ShippedTexts.lineOf(spoilt.get(FULLNESS), "heigth"),
                "S-01: A full tree swallows colour, so the darker flower counts for more", List.of(),
                "The condition \"heigth > 2.1\" asks for something that this kind of fact does not have."), fault);
    }

    @Test
    void faults_of_several_rules_in_several_files_are_all_told_in_file_order() {
        var spoilt = ShippedTexts.with(shipped, FULLNESS, "Fullness.SPARSE", "Fullness.SPARS");
        spoilt = ShippedTexts.with(spoilt, FULLNESS, "new StyleWish(\"dark flower\", 1.5)", "new StyleWish(\"dark flower\")");
        spoilt = ShippedTexts.with(spoilt, HOUSEHOLD, "nearestHeat", "nearHeat");
        assertEquals(List.of("S-01", "S-02", "C-03"), faults(spoilt).stream().map(fault -> fault.part().substring(0, 4)).toList());
        assertEquals("Fullness has no \"SPARS\".", faults(spoilt).get(1).message());
        assertEquals("The constructor StyleWish(String) is undefined", faults(spoilt).get(0).message());
    }

    @Test
    void a_file_that_the_engine_would_skip_is_a_fault() {
        for (var name : List.of("style/household.txt", "style/household.DRL", "style/household.drlx", "style/household")) {
            var renamed = new TreeMap<>(shipped);
            renamed.put(name, renamed.remove(HOUSEHOLD));
            var fault = onlyFault(renamed);
            assertEquals(name, fault.file());
            assertEquals("A rule file's name must end in .drl, or its rules are never read.", fault.message());
        }
    }

    @Test
    void a_file_outside_the_package_is_a_fault() {
        var fault = onlyFault(ShippedTexts.with(shipped, HOUSEHOLD, "package boughwright.rules;", "package boughwright.ruless;"));
        assertEquals("The file must begin with \"package boughwright.rules;\".", fault.message());
    }

    @Test
    void an_import_of_nothing_is_named_by_its_line() {
        var spoilt = ShippedTexts.with(shipped, FULLNESS, "import boughwright.brief.Tree;", "import boughwright.brief.Treee;");
        assertEquals(List.of(RulebookFault.ofFile(FULLNESS, ShippedTexts.lineOf(spoilt.get(FULLNESS), "import boughwright.brief.Treee"),
                "The file imports boughwright.brief.Treee, which does not exist.")), faults(spoilt));
    }

    @Test
    void an_id_used_twice_is_a_fault_that_tells_where_it_was_first_used() {
        var fault = onlyFault(ShippedTexts.with(shipped, HOUSEHOLD, "C-02: ", "C-01: "));
        assertEquals("The id C-01 is already used in " + HOUSEHOLD + ", line "
                + ShippedTexts.lineOf(shipped.get(HOUSEHOLD), "rule \"C-01") + ".", fault.message());
    }

    @Test
    void a_rule_without_an_id_is_a_fault() {
        var fault = onlyFault(ShippedTexts.with(shipped, HOUSEHOLD, "C-02: ", ""));
        assertTrue(fault.message().startsWith("A rule's name is its id, a colon and a sentence"), fault.message());
    }

    @Test
    void a_rule_that_changes_facts_or_asks_for_an_order_is_a_fault() {
        var fault = onlyFault(ShippedTexts.with(shipped, FULLNESS, "insert( new StyleWish(\"filler ball\", 2.0) );", "delete( $tree );"));
        assertEquals("A rule only adds findings: it must not change or remove a fact.", fault.message());
        assertEquals(ShippedTexts.lineOf(shipped.get(FULLNESS), "insert( new StyleWish(\"filler ball\""), fault.line());
        assertEquals(1, faults(ShippedTexts.with(shipped, FULLNESS, "when\n    Tree( fullness == Fullness.SPARSE )",
                "salience 10\nwhen\n    Tree( fullness == Fullness.SPARSE )")).size());
    }

    @Test
    void words_in_comments_and_texts_are_not_taken_for_rules() {
        var source = DrlSource.read("a.drl", "// rule \"X\"\n/* rule \"Y\" */ rule \"S-01: the rule \\\"Z\\\" of salience\" when then foo('rule \"W\"'); end");
        assertEquals(1, source.rules().size());
        assertEquals(2, source.rules().get(0).line());
    }

    private static RulebookFault onlyFault(Map<String, String> texts) {
        var faults = faults(texts);
        assertEquals(1, faults.size(), faults.toString());
        return faults.get(0);
    }

    private static List<RulebookFault> faults(Map<String, String> texts) {
        return assertInstanceOf(DrlCompilation.Faulty.class, new DrlCompiler().compile(texts)).faults();
    }
}
