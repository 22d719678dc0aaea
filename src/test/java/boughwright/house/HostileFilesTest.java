package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import boughwright.house.HostileFiles.Hostile;
import boughwright.measure.Units;
import boughwright.rulebook.Rulebook;
import boughwright.rulebook.RulebookFixture;
import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.StringReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.kie.dmn.api.core.DMNContext;
import org.kie.dmn.api.core.DMNModel;
import org.kie.dmn.api.core.DMNRuntime;
import org.kie.dmn.core.internal.utils.DMNRuntimeBuilder;
import org.kie.internal.io.ResourceFactory;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class HostileFilesTest {

    private static final Duration SOON = Duration.ofSeconds(10);
    /** All that reading one file may take, most of it freed at once. */
    private static final long MOST_ALLOCATED = 600_000_000;
    private static final int LONGEST_SENTENCE = 2_500;
    private static final SortedMap<String, String> SHIPPED = RulebookFixture.texts();

    @TempDir
    static Path temporary;

    private static Canary canary;
    private static List<Hostile> files;
    /** Checks a sheet that it knows only once, as on the staff's screens. */
    private static HouseCheck check;
    /** Most hostile files come out as the same texts; opening them takes seconds. */
    private static final Set<Map<String, String>> opened = new HashSet<>();

    @BeforeAll
    static void wake() throws IOException {
        canary = new Canary(temporary);
        files = HostileFiles.of(canary);
        check = new HouseCheck(Units.FEET);
        assertThat(check.of(HouseFixture.shipped())).isEmpty();
    }

    @AfterAll
    static void close() throws IOException {
        canary.close();
    }

    @AfterEach
    void reset() throws IOException {
        canary.reset();
    }

    @Test
    void there_are_two_hundred_of_them_and_no_two_are_alike() {
        assertThat(files).hasSize(200).extracting(Hostile::title).doesNotHaveDuplicates();
        assertThat(files.stream().map(f -> f.name() + " " + new String(f.bytes(), StandardCharsets.ISO_8859_1)).distinct()).hasSize(200);
    }

    @TestFactory
    Stream<DynamicTest> none_of_two_hundred_hostile_files_runs() {
        return files.stream().map(file -> DynamicTest.dynamicTest(file.title(), () -> {
            EditionArchive.Reading reading = assertTimeoutPreemptively(SOON, () -> cheaply(file));
            if (file.data()) {
                assertThat(reading).isInstanceOf(EditionArchive.Reading.Read.class);
                comesOutAsData(((EditionArchive.Reading.Read) reading).rules());
            } else {
                assertThat(reading).isInstanceOf(EditionArchive.Reading.Faulty.class);
                saysWhatIsWrong(((EditionArchive.Reading.Faulty) reading).faults());
            }
            assertThat(canary.trips()).isEmpty();
        }));
    }

    @Test
    void the_canary_sings_when_an_engine_evaluates_what_the_files_hold() throws IOException {
        for (String expression : HostileFiles.expressions(canary)) {
            evaluated("<definitions xmlns=\"https://www.omg.org/spec/DMN/20230324/MODEL/\" namespace=\"n\" name=\"m\"><decision name=\"Base\"><variable name=\"Base\"/>"
                    + "<literalExpression><text>" + HostileFiles.escaped(expression) + "</text></literalExpression></decision></definitions>");
            assertThat(canary.trips()).as(expression).isNotEmpty();
            canary.reset();
        }
    }

    @Test
    void the_canary_sings_when_an_engine_is_given_a_hostile_table_itself() throws IOException {
        String hostile = HostileFiles.inOutput(HostileFiles.expressions(canary).get(0));
        assertThat(files).anySatisfy(f -> assertThat(new String(f.bytes(), StandardCharsets.UTF_8)).isEqualTo(hostile));
        evaluated(hostile);
        assertThat(canary.trips()).isNotEmpty();
    }

    @Test
    void markup_in_a_reason_is_read_and_written_as_the_words_that_it_is() throws Exception {
        for (String words : HostileFiles.markedUp(canary)) {
            Hostile file = files.stream().filter(f -> f.title().equals(HostileFiles.reasonTitle(words))).findFirst().orElseThrow();
            HouseRules rules = ((EditionArchive.Reading.Read) cheaply(file)).rules();
            Sheet sheet = rules.sheet("body-ribbon").orElseThrow();
            assertThat(sheet.grid("Fullness factor").orElseThrow().rows().get(2).reason()).isEqualTo(words);
            String written = SheetWriter.dmn(sheet);
            assertThat(written).contains("<annotationEntry><text>" + HostileFiles.escaped(words) + "</text>");
            assertThat(texts(written, "annotationEntry")).contains(words);
        }
    }

    private static void evaluated(String text) {
        DMNRuntime runtime = DMNRuntimeBuilder.fromDefaults().setRootClassLoader(Canary.class.getClassLoader()).buildConfiguration()
                .fromResources(List.of(ResourceFactory.newReaderResource(new StringReader(text)).setSourcePath("hostile.dmn")))
                .getOrElseThrow(IllegalStateException::new);
        DMNModel model = runtime.getModels().get(0);
        DMNContext context = runtime.newContext();
        Map.of("height", 4, "fullness", "medium", "seen from", "wall", "abundance", "generous").forEach(context::set);
        runtime.evaluateByName(model, context, "Base");
    }

    private static EditionArchive.Reading cheaply(Hostile file) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        EditionArchive.Reading reading = EditionArchive.read(file.name(), file.bytes(), HouseFixture.shipped(), HouseFixture.rulebook().edition());
        assertThat(threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before).isLessThan(MOST_ALLOCATED);
        return reading;
    }

    private static void saysWhatIsWrong(List<String> faults) {
        assertThat(faults).isNotEmpty().hasSizeLessThanOrEqualTo(51).allSatisfy(sentence -> {
            assertThat(sentence).matches("(?s).*\\b(file|archive|" + HostileFiles.SHEET + "|body-ribbon\\.dmn|edition\\.json|sizing/[a-z-]+\\.dmn)\\b.*");
            assertThat(sentence).hasSizeBetween(20, LONGEST_SENTENCE).doesNotContain("Exception", "not null", ": null", Canary.SECRET);
        });
    }

    /** Either what must be mended is named, or it can go live as numbers and words alone. */
    private static void comesOutAsData(HouseRules rules) throws Exception {
        assertThat(EditionTexts.json(rules)).doesNotContain(Canary.SECRET);
        assertThat(EditionTexts.draft(EditionTexts.json(rules))).isEqualTo(rules);
        if (assertTimeoutPreemptively(SOON, () -> check.of(rules)).stream().anyMatch(Complaint::fault)) {
            return;
        }
        SortedMap<String, String> texts = EditionTexts.of(rules, "hostile", "Hostile", HouseFixture.rulebook().edition());
        for (String path : texts.keySet().stream().filter(p -> p.endsWith(".dmn")).toList()) {
            holdsDataAlone(texts.get(path));
        }
        Map<String, String> all = new LinkedHashMap<>(SHIPPED);
        all.putAll(texts);
        if (opened.add(texts)) {
            assertThat(Rulebook.open(all::get)).isInstanceOf(Rulebook.Opening.Open.class);
        }
        EditionArchive.Reading again = EditionArchive.read("again.zip", EditionArchive.zip(texts, "Hostile", ""), HouseFixture.shipped(),
                HouseFixture.rulebook().edition());
        assertThat(((EditionArchive.Reading.Read) again).rules()).isEqualTo(rules);
    }

    private static void holdsDataAlone(String dmn) throws Exception {
        assertThat(elements(dmn)).isSubsetOf(elements(SHIPPED.get("sizing/body-ribbon.dmn")));
        assertThat(texts(dmn, "outputEntry")).allMatch(cell -> cell.matches("[0-9.]+( \\* \\(height / [0-9.]+\\) \\*\\* 2)?|true|false|\"(up|nearest|down)\""));
        assertThat(texts(dmn, "inputEntry")).allMatch(cell -> cell.matches("-|[\\[(][0-9.]+ \\.\\. [0-9.]+[])]|\"[a-z0-9 .-]+\"(, \"[a-z0-9 .-]+\")*"));
    }

    private static Set<String> elements(String dmn) throws Exception {
        NodeList all = document(dmn).getElementsByTagNameNS("*", "*");
        Set<String> names = new TreeSet<>();
        for (int i = 0; i < all.getLength(); i++) {
            names.add(all.item(i).getNamespaceURI() + " " + all.item(i).getLocalName());
        }
        return names;
    }

    private static List<String> texts(String dmn, String element) throws Exception {
        NodeList all = document(dmn).getElementsByTagNameNS("*", element);
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            texts.add(all.item(i).getTextContent().strip());
        }
        return texts;
    }

    private static Document document(String dmn) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(dmn)));
    }
}
