package boughwright;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * What each package may know, as allowlists: nothing that is not named here. Each list has a class that breaks it, compiled on
 * the spot, which the rule must reject; a rule that rejects nothing checks nothing.
 */
class ArchitectureTest {

    private static final String[] JACKSON = {"com.fasterxml.jackson"};

    /** @param bad a type that the package must not know */
    private record Allowed(List<String> own, List<String> libraries, String bad) {
    }

    private static final Map<String, Allowed> PACKAGES = new LinkedHashMap<>();

    static {
        allow("text", "", "boughwright.measure.Length");
        allow("measure", "text", "boughwright.brief.Brief");
        allow("colour", "text", "boughwright.measure.Length");
        allow("brief", "text measure colour", "boughwright.needs.Need", JACKSON);
        allow("needs", "text measure colour brief", "org.springframework.stereotype.Component");
        allow("rulebook", "text measure colour brief needs", "boughwright.kit.Kit", "org.kie", "org.drools", "com.fasterxml.jackson", "org.w3c", "org.xml");
        allow("catalogue", "text measure colour brief needs", "boughwright.rulebook.Rulebook", JACKSON);
        allow("photo", "text colour brief catalogue", "boughwright.kit.Kit");
        allow("kit", "text measure colour brief needs catalogue", "org.kie.api.KieBase", "com.google.ortools");
        allow("palette", "text measure colour brief needs catalogue kit", "boughwright.drawing.TreePicture", JACKSON);
        allow("layout", "text measure colour brief needs catalogue kit", "com.google.ortools.linearsolver.MPSolver");
        allow("plan", "text measure colour brief needs catalogue kit layout", "boughwright.drawing.TreePicture");
        allow("drawing", "text measure colour brief needs catalogue kit palette layout plan", "boughwright.proposal.Proposal", "com.google.zxing");
        allow("proposal", "text measure colour brief needs rulebook catalogue kit layout plan", "boughwright.consultation.Saved", JACKSON);
        allow("athome", "text measure needs catalogue layout plan drawing proposal rulebook brief kit", "org.springframework.stereotype.Component", JACKSON);
        allow("document", "text measure colour brief needs rulebook catalogue kit layout plan drawing proposal quote", "com.vaadin.flow.component.UI",
                "com.openhtmltopdf", "org.apache.pdfbox", "org.apache.fontbox", "de.rototor.pdfbox", "org.apache.batik", "org.w3c", "org.xml");
        allow("intake", "text measure colour brief needs catalogue", "org.springframework.stereotype.Component", "com.fasterxml.jackson", "org.dhatim.fastexcel");
        allow("house", "text measure colour brief needs rulebook catalogue kit layout plan proposal", "org.springframework.stereotype.Component", JACKSON);
        allow("quote", "text measure brief needs rulebook catalogue kit proposal", "org.springframework.stereotype.Component", JACKSON);
        allow("storage", "text", "boughwright.shelf.Shelf", "org.springframework", "org.slf4j", "org.flywaydb", "com.fasterxml.jackson", "com.zaxxer.hikari");
        allow("people", "text storage", "boughwright.shelf.Shelf", "org.springframework", "org.slf4j", "com.nulabinc.zxcvbn");
        allow("guard", "text people athome", "boughwright.shelf.Shelf", "org.springframework", "jakarta.servlet", "com.fasterxml.jackson", "org.slf4j");
        allow("shelf", "text catalogue intake storage", "boughwright.rulebook.Rulebook", "com.fasterxml.jackson", "org.springframework", "org.slf4j");
        allow("publishing", "text measure brief needs rulebook catalogue kit proposal house storage shelf", "boughwright.consultation.Saved",
                "com.fasterxml.jackson", "org.springframework", "org.slf4j");
        allow("consultation", "text measure brief needs catalogue kit proposal rulebook publishing shelf storage", "com.vaadin.flow.component.UI", "com.fasterxml.jackson",
                "org.springframework");
        allow("counter", "text measure brief needs rulebook catalogue kit proposal quote storage shelf consultation", "com.vaadin.flow.component.UI", "com.fasterxml.jackson",
                "org.springframework", "jakarta.mail", "org.slf4j");
        allow("running", "text proposal kit publishing storage", "boughwright.shelf.Shelf", "org.springframework", "io.micrometer", "jakarta.servlet", "org.slf4j");
        allow("cli", "text measure brief needs rulebook catalogue kit layout plan drawing proposal document", "org.springframework.jdbc.core.JdbcTemplate");
        allow("api", "text measure colour brief needs rulebook catalogue photo kit palette plan drawing proposal document intake publishing shelf consultation athome counter", "com.vaadin.flow.component.UI",
                "com.fasterxml.jackson", "org.springframework", "io.swagger", "jakarta.servlet.http");
        allow("ui", "text measure colour brief needs rulebook catalogue photo kit palette layout plan drawing proposal house intake publishing shelf consultation athome people guard counter quote document storage", "java.sql.Connection",
                "com.vaadin", "org.jsoup", "org.slf4j", "com.fasterxml.jackson", "jakarta.servlet.http", "elemental.json", "org.springframework.beans.factory.annotation");
    }

    private static void allow(String name, String own, String bad, String... libraries) {
        PACKAGES.put(name, new Allowed(own.isEmpty() ? List.of() : List.of(own.split(" ")), List.of(libraries), bad));
    }

    private static ArchRule rule(String name) {
        Allowed allowed = PACKAGES.get(name);
        List<String> prefixes = new ArrayList<>(allowed.libraries());
        allowed.own().forEach(p -> prefixes.add("boughwright." + p));
        prefixes.add("boughwright." + name);
        boolean database = List.of("consultation", "counter", "people", "publishing", "shelf", "storage").contains(name);
        return classes().that().resideInAPackage("boughwright." + name + "..").should().onlyDependOnClassesThat(
                describe("are of the JDK or of " + prefixes, (JavaClass c) -> of(c.getPackageName(), prefixes) || jdk(c, database)))
                .allowEmptyShould(false);
    }

    private static boolean of(String packageName, List<String> prefixes) {
        return prefixes.stream().anyMatch(p -> packageName.equals(p) || packageName.startsWith(p + "."));
    }

    private static boolean jdk(JavaClass c, boolean database) {
        String name = c.getBaseComponentType().getPackageName();
        boolean sql = name.startsWith("java.sql") || name.startsWith("javax.sql");
        return c.getBaseComponentType().isPrimitive() || (name.startsWith("java.") || name.startsWith("javax.")) && (!sql || database);
    }

    private static JavaClasses shipped() {
        return new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("boughwright");
    }

    @TestFactory
    Stream<DynamicTest> each_package_knows_only_what_it_may() {
        JavaClasses classes = shipped();
        return PACKAGES.keySet().stream().map(name -> DynamicTest.dynamicTest(name, () -> rule(name).check(classes)));
    }

    @TestFactory
    Stream<DynamicTest> each_rule_rejects_a_class_that_breaks_it(@TempDir Path folder) {
        return PACKAGES.entrySet().stream().map(entry -> DynamicTest.dynamicTest(entry.getKey() + " may not know " + entry.getValue().bad(), () -> {
            JavaClasses bad = compiled(folder.resolve(entry.getKey()), entry.getKey(), entry.getValue().bad());
            assertThat(rule(entry.getKey()).evaluate(bad).hasViolation()).isTrue();
        }));
    }

    @Test
    void every_package_has_its_rule_and_says_what_it_is() throws IOException {
        TreeSet<String> found = shipped().stream().map(JavaClass::getPackageName).filter(p -> p.startsWith("boughwright."))
                .map(p -> p.substring("boughwright.".length())).collect(Collectors.toCollection(TreeSet::new));
        assertThat(found).containsExactlyInAnyOrderElementsOf(PACKAGES.keySet());
        for (String name : found) {
            assertThat(Files.readString(Path.of("src/main/java/boughwright", name, "package-info.java"))).contains("/**");
        }
    }

    @Test
    void no_class_is_called_manager_helper_util_or_impl() {
        assertThat(shipped().stream().map(JavaClass::getSimpleName).filter(n -> n.matches(".*(Manager|Helper|Utils?|Impl)"))).isEmpty();
    }

    @Test
    void the_clock_and_chance_are_known_to_what_is_kept_alone() {
        List<String> offenders = shipped().stream().filter(c -> !List.of("boughwright.consultation", "boughwright.counter", "boughwright.guard", "boughwright.people", "boughwright.publishing", "boughwright.running", "boughwright.shelf", "boughwright.storage").contains(c.getPackageName()))
                .filter(c -> c.getDirectDependenciesFromSelf().stream().map(d -> d.getTargetClass().getName())
                        .anyMatch(n -> List.of("java.util.Random", "java.security.SecureRandom", "java.time.Clock", "java.time.Instant").contains(n))
                        || c.getMethodCallsFromSelf().stream().anyMatch(call -> call.getTargetOwner().getPackageName().equals("java.time")
                                && call.getName().equals("now") || call.getName().equals("currentTimeMillis")))
                .map(JavaClass::getName).toList();
        assertThat(offenders).isEmpty();
    }

    private static JavaClasses compiled(Path folder, String name, String bad) throws IOException {
        Path source = folder.resolve("Breaks.java");
        Files.createDirectories(folder);
        Files.writeString(source, "package boughwright." + name + ";\nclass Breaks {\n    " + bad + " field;\n}\n");
        int failed = ToolProvider.getSystemJavaCompiler().run(null, null, null, "-proc:none", "-d", folder.toString(),
                "-cp", System.getProperty("java.class.path"), source.toString());
        assertThat(failed).isZero();
        return new ClassFileImporter().importPath(folder);
    }
}
