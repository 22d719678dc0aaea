package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.InputStream;
import java.io.StringReader;
import java.math.BigDecimal;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kie.dmn.api.core.DMNContext;
import org.kie.dmn.api.core.DMNDecisionResult;
import org.kie.dmn.api.core.DMNMessage;
import org.kie.dmn.api.core.DMNModel;
import org.kie.dmn.api.core.DMNResult;
import org.kie.dmn.api.core.DMNRuntime;
import org.kie.dmn.core.internal.utils.DMNRuntimeBuilder;
import org.kie.internal.io.ResourceFactory;
import org.w3c.dom.bootstrap.DOMImplementationRegistry;
import org.w3c.dom.ls.DOMImplementationLS;
import org.w3c.dom.ls.LSInput;
import org.xml.sax.SAXException;

/** What the standard and other people's programs say of the files: the OMG's schema, a file of another hand, cases in the way of the DMN TCK. */
class OutsideChecksTest {

    private static final String SCHEMAS = "/org/kie/dmn/validation/org/omg/spec/DMN/20230324/";
    private static final SortedMap<String, String> WRITTEN = EditionTexts.of(HouseFixture.shipped(), "winter-26", "Winter 26",
            HouseFixture.rulebook().edition());

    private static Schema schema;
    private static DMNRuntime runtime;

    @BeforeAll
    static void open() throws Exception {
        SchemaFactory factory = SchemaFactory.newDefaultInstance();
        DOMImplementationLS dom = (DOMImplementationLS) DOMImplementationRegistry.newInstance().getDOMImplementation("LS");
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        factory.setResourceResolver((type, namespace, publicId, systemId, base) -> {
            LSInput input = dom.createLSInput();
            input.setSystemId(systemId);
            input.setByteStream(resource(URI.create(systemId).getPath().replaceFirst(".*/", "")));
            return input;
        });
        schema = factory.newSchema(new StreamSource(resource("DMN15.xsd"), "DMN15.xsd"));
        runtime = DMNRuntimeBuilder.fromDefaults().setRootClassLoader(OutsideChecksTest.class.getClassLoader()).buildConfiguration()
                .fromResources(WRITTEN.entrySet().stream().filter(f -> f.getKey().endsWith(".dmn"))
                        .map(f -> ResourceFactory.newReaderResource(new StringReader(f.getValue())).setSourcePath(f.getKey())).toList())
                .getOrElseThrow(IllegalStateException::new);
    }

    private static InputStream resource(String file) {
        InputStream found = OutsideChecksTest.class.getResourceAsStream(SCHEMAS + file);
        assertThat(found).as(file).isNotNull();
        return found;
    }

    private static void validate(String dmn) throws Exception {
        schema.newValidator().validate(new StreamSource(new StringReader(dmn)));
    }

    @TestFactory
    Stream<DynamicTest> every_file_is_valid_by_the_schema_of_dmn_1_5() {
        assertThat(WRITTEN.keySet()).filteredOn(p -> p.endsWith(".dmn")).hasSize(11);
        return WRITTEN.entrySet().stream().filter(f -> f.getKey().endsWith(".dmn")).map(f -> DynamicTest.dynamicTest(f.getKey(), () -> validate(f.getValue())));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<inputEntry><text>[3 .. 5)</text></inputEntry> | <inputEntry><words>[3 .. 5)</words></inputEntry>",
        "hitPolicy=\"UNIQUE\" | hitPolicy=\"SINGLE\"",
        "<dc:Bounds x=\"40\" | <dc:Bounds left=\"40\"",
        "namespace=\"boughwright/sizing/body-ribbon\" | ''"})
    void the_schema_refuses_a_file_that_was_spoilt(String part, String other) {
        String spoilt = WRITTEN.get("sizing/body-ribbon.dmn").replace(part, other);
        assertThat(spoilt).isNotEqualTo(WRITTEN.get("sizing/body-ribbon.dmn"));
        assertThatThrownBy(() -> validate(spoilt)).isInstanceOf(SAXException.class);
    }

    /** Written from the text of OMG formal/23-08-01, as another program might: prefixes, ids, columns and ways to say a range are its own. */
    private static final String OTHER_HAND = """
            <?xml version="1.0" encoding="UTF-8" standalone="yes"?>
            <!-- Kept by the window team. -->
            <semantic:definitions xmlns:semantic="https://www.omg.org/spec/DMN/20230324/MODEL/" xmlns:shop="https://shop.example/ns"
                id="_d1" name="Rolls of body ribbon" namespace="https://shop.example/ribbon"
                expressionLanguage="https://www.omg.org/spec/DMN/20230324/FEEL/" typeLanguage="https://www.omg.org/spec/DMN/20230324/FEEL/"
                exporter="Another program" exporterVersion="7.1">
              <semantic:description><![CDATA[Rolls of 10 yd
                of each & every body ribbon.]]></semantic:description>
              <semantic:extensionElements><shop:colour>red</shop:colour></semantic:extensionElements>
              <semantic:itemDefinition id="_t1" name="tAbundance" label="How lavish">
                <semantic:description>From little to much</semantic:description>
                <semantic:typeRef>string</semantic:typeRef>
                <semantic:allowedValues id="_a1"><semantic:text>"restrained","generous","lavish"</semantic:text></semantic:allowedValues>
              </semantic:itemDefinition>
              <semantic:itemDefinition id="_t2" name="tFullness"><semantic:typeRef>string</semantic:typeRef>
                <semantic:allowedValues><semantic:text>"sparse", "medium", "full"</semantic:text></semantic:allowedValues></semantic:itemDefinition>
              <semantic:itemDefinition id="_t3" name="tSeenFrom"><semantic:typeRef>string</semantic:typeRef>
                <semantic:allowedValues><semantic:text>"corner", "wall", "bay", "round"</semantic:text></semantic:allowedValues></semantic:itemDefinition>
              <semantic:itemDefinition id="_t4" name="tFeet"><semantic:typeRef>number</semantic:typeRef>
                <semantic:allowedValues><semantic:text>[3..20]</semantic:text></semantic:allowedValues></semantic:itemDefinition>
              <semantic:itemDefinition id="_t5" name="tPolicy">
                <semantic:itemComponent id="_c1" name="rounding"><semantic:typeRef>string</semantic:typeRef></semantic:itemComponent>
                <semantic:itemComponent id="_c2" name="least"><semantic:typeRef>number</semantic:typeRef></semantic:itemComponent>
                <semantic:itemComponent id="_c3" name="girth"><semantic:typeRef>boolean</semantic:typeRef></semantic:itemComponent>
              </semantic:itemDefinition>
              <semantic:inputData id="_i1" name="abundance"><semantic:variable id="_v1" name="abundance" typeRef="tAbundance"/></semantic:inputData>
              <semantic:inputData id="_i2" name="seen from"><semantic:variable name="seen from" typeRef="tSeenFrom"/></semantic:inputData>
              <semantic:inputData id="_i3" name="fullness"><semantic:variable name="fullness" typeRef="tFullness"/></semantic:inputData>
              <semantic:inputData id="_i4" name="height"><semantic:variable name="height" typeRef="tFeet"/></semantic:inputData>
              <semantic:decision id="_b" name="Base">
                <semantic:question>How many rolls?</semantic:question>
                <semantic:allowedAnswers>Rolls and parts of rolls</semantic:allowedAnswers>
                <semantic:variable id="_bv" name="Base" typeRef="number"/>
                <semantic:informationRequirement id="_r1"><semantic:requiredInput href="#_i1"/></semantic:informationRequirement>
                <semantic:informationRequirement id="_r2"><semantic:requiredInput href="#_i4"/></semantic:informationRequirement>
                <semantic:decisionTable id="_bt" preferredOrientation="Rule-as-Row" outputLabel="Rolls">
                  <semantic:input id="_in1" label="Abundance"><semantic:inputExpression id="_e1" typeRef="tAbundance"><semantic:text>abundance</semantic:text>
                    </semantic:inputExpression></semantic:input>
                  <semantic:input id="_in2"><semantic:inputExpression typeRef="tFeet"><semantic:text>
                    height
                  </semantic:text></semantic:inputExpression><semantic:inputValues><semantic:text>[3..20]</semantic:text></semantic:inputValues></semantic:input>
                  <semantic:output id="_o1" name="Base" label="Rolls" typeRef="number"/>
                  <semantic:annotation name="who"/>
                  <semantic:annotation name="reason"/>
                  <semantic:rule id="_1"><semantic:inputEntry id="_11"><semantic:text>-</semantic:text></semantic:inputEntry>
                    <semantic:inputEntry><semantic:text>&lt; 5</semantic:text></semantic:inputEntry>
                    <semantic:outputEntry><semantic:text>0.50</semantic:text></semantic:outputEntry>
                    <semantic:annotationEntry><semantic:text>Ada</semantic:text></semantic:annotationEntry>
                    <semantic:annotationEntry><semantic:text>Small trees of {height}
                      take {quantity}.</semantic:text></semantic:annotationEntry></semantic:rule>
                  <semantic:rule><semantic:inputEntry><semantic:text>"restrained","generous"</semantic:text></semantic:inputEntry>
                    <semantic:inputEntry><semantic:text><![CDATA[[5..7.5[]]></semantic:text></semantic:inputEntry>
                    <semantic:outputEntry><semantic:text>1.2</semantic:text></semantic:outputEntry>
                    <semantic:annotationEntry><semantic:text/></semantic:annotationEntry>
                    <semantic:annotationEntry><semantic:text>Ribbon &amp; tails: {quantity}.</semantic:text></semantic:annotationEntry></semantic:rule>
                  <semantic:rule><semantic:inputEntry><semantic:text>"lavish"</semantic:text></semantic:inputEntry>
                    <semantic:inputEntry><semantic:text>[5..7.5)</semantic:text></semantic:inputEntry>
                    <semantic:outputEntry><semantic:text>1<!-- and a half -->.5</semantic:text></semantic:outputEntry>
                    <semantic:annotationEntry><semantic:text/></semantic:annotationEntry>
                    <semantic:annotationEntry><semantic:text>Lavish: {quantity}.</semantic:text></semantic:annotationEntry></semantic:rule>
                  <semantic:rule><semantic:inputEntry><semantic:text>-</semantic:text></semantic:inputEntry>
                    <semantic:inputEntry><semantic:text>[7.5..10]</semantic:text></semantic:inputEntry>
                    <semantic:outputEntry><semantic:text>2.0</semantic:text></semantic:outputEntry>
                    <semantic:annotationEntry><semantic:text/></semantic:annotationEntry>
                    <semantic:annotationEntry><semantic:text>Middling trees: {quantity}.</semantic:text></semantic:annotationEntry></semantic:rule>
                  <semantic:rule><semantic:inputEntry><semantic:text>-</semantic:text></semantic:inputEntry>
                    <semantic:inputEntry><semantic:text>]10..12[</semantic:text></semantic:inputEntry>
                    <semantic:outputEntry><semantic:text>3</semantic:text></semantic:outputEntry>
                    <semantic:annotationEntry><semantic:text/></semantic:annotationEntry>
                    <semantic:annotationEntry><semantic:text>Tall trees: {quantity}.</semantic:text></semantic:annotationEntry></semantic:rule>
                  <semantic:rule><semantic:inputEntry><semantic:text>-</semantic:text></semantic:inputEntry>
                    <semantic:inputEntry><semantic:text>&gt;= 12</semantic:text></semantic:inputEntry>
                    <semantic:outputEntry><semantic:text>4*(height/12)**2</semantic:text></semantic:outputEntry>
                    <semantic:annotationEntry><semantic:text/></semantic:annotationEntry>
                    <semantic:annotationEntry><semantic:text>Towering trees: {quantity}.</semantic:text></semantic:annotationEntry></semantic:rule>
                </semantic:decisionTable>
              </semantic:decision>
              %s
              <semantic:decision id="_p" name="Policy"><semantic:variable name="Policy" typeRef="tPolicy"/>
                <semantic:informationRequirement><semantic:requiredInput href="#_i4"/></semantic:informationRequirement>
                <semantic:decisionTable hitPolicy="UNIQUE">
                  <semantic:input><semantic:inputExpression><semantic:text>height</semantic:text></semantic:inputExpression></semantic:input>
                  <semantic:output name="rounding" typeRef="string"/><semantic:output name="least" typeRef="number"/><semantic:output name="girth" typeRef="boolean"/>
                  <semantic:annotation name="reason"/>
                  <semantic:rule><semantic:inputEntry><semantic:text>-</semantic:text></semantic:inputEntry>
                    <semantic:outputEntry><semantic:text>"up"</semantic:text></semantic:outputEntry>
                    <semantic:outputEntry><semantic:text>1</semantic:text></semantic:outputEntry>
                    <semantic:outputEntry><semantic:text>true</semantic:text></semantic:outputEntry>
                    <semantic:annotationEntry><semantic:text>Ribbon is sold by the roll.</semantic:text></semantic:annotationEntry></semantic:rule>
                </semantic:decisionTable>
              </semantic:decision>
            </semantic:definitions>
            """.formatted(factor("Fullness factor", "fullness", "tFullness", "_i3") + factor("Seen-from factor", "seen from", "tSeenFrom", "_i2")
            + factor("Abundance factor", "abundance", "tAbundance", "_i1"));

    private static String factor(String name, String input, String type, String id) {
        return """
                <semantic:decision name="%1$s"><semantic:variable name="%1$s" typeRef="number"/>
                    <semantic:informationRequirement><semantic:requiredInput href="#%4$s"/></semantic:informationRequirement>
                    <semantic:decisionTable><semantic:input><semantic:inputExpression typeRef="%3$s"><semantic:text>%2$s</semantic:text></semantic:inputExpression></semantic:input>
                      <semantic:output/><semantic:annotation name="reason"/>
                      <semantic:rule><semantic:inputEntry><semantic:text>-</semantic:text></semantic:inputEntry><semantic:outputEntry><semantic:text>1</semantic:text>
                        </semantic:outputEntry><semantic:annotationEntry><semantic:text>No matter.</semantic:text></semantic:annotationEntry></semantic:rule>
                    </semantic:decisionTable></semantic:decision>
                """.formatted(name, input, type, id);
    }

    @Test
    void a_file_of_another_hand_by_the_same_standard_gives_the_rows_that_it_means() throws Exception {
        validate(OTHER_HAND);
        HouseRules rules = imported(OTHER_HAND);
        Sheet sheet = rules.sheet("body-ribbon").orElseThrow();
        assertThat(sheet.about()).isEqualTo("Rolls of 10 yd of each & every body ribbon.");
        Grid base = sheet.grid(Grid.BASE).orElseThrow();
        assertThat(base.byHeight()).isTrue();
        assertThat(base.columns()).containsExactly(new Column("abundance", List.of("restrained", "generous", "lavish")));
        assertThat(base.rows()).containsExactly(
                new GridRow(new Heights("3 ft", false, "5 ft", false), List.of(List.of()), List.of("0.5"), false, "Small trees of {height} take {quantity}."),
                new GridRow(new Heights("5 ft", false, "7 ft 6 in", false), List.of(List.of("restrained", "generous")), List.of("1.2"), false,
                        "Ribbon & tails: {quantity}."),
                new GridRow(new Heights("5 ft", false, "7 ft 6 in", false), List.of(List.of("lavish")), List.of("1.5"), false, "Lavish: {quantity}."),
                new GridRow(new Heights("7 ft 6 in", false, "10 ft", true), List.of(List.of()), List.of("2"), false, "Middling trees: {quantity}."),
                new GridRow(new Heights("10 ft", true, "12 ft", false), List.of(List.of()), List.of("3"), false, "Tall trees: {quantity}."),
                new GridRow(new Heights("12 ft", false, "20 ft", true), List.of(List.of()), List.of("4"), true, "Towering trees: {quantity}."));
        assertThat(HouseFixture.complaints(rules)).isEmpty();
        validate(SheetWriter.dmn(sheet));
        assertThat(imported(SheetWriter.dmn(sheet))).isEqualTo(rules);
    }

    private static HouseRules imported(String dmn) {
        EditionArchive.Reading reading = EditionArchive.read("body-ribbon.dmn", dmn.getBytes(StandardCharsets.UTF_8), HouseFixture.shipped(),
                HouseFixture.rulebook().edition());
        assertThat(reading).isInstanceOf(EditionArchive.Reading.Read.class);
        return ((EditionArchive.Reading.Read) reading).rules();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        //                 3   | 4.999999 | 5   | 12   | 12.000001          | 20
        "Rolls of body ribbon | 0.45 | 0.45 | 1.2 | 4.25 | 4.250000708333363 | 11.805555555555555",
        "Clusters             | 3    | 4    | 5   | 13   | 13.00000216666676 | 36.11111111111111"})
    void at_the_edges_of_its_ranges_a_written_table_answers_as_it_says(String table, String at3, String below5, String at5, String at12, String above12,
            String at20) {
        Map<String, String> cases = Map.of("3", at3, "4.999999", below5, "5", at5, "12", at12, "12.000001", above12, "20", at20);
        cases.forEach((height, expected) -> {
            Object answer = evaluated(table, "Base", Map.of("height", new BigDecimal(height), "fullness", "medium", "seen from", "wall", "abundance",
                    "generous"));
            assertThat(((BigDecimal) answer).doubleValue()).as(table + " at " + height).isCloseTo(Double.parseDouble(expected), within(1e-9));
        });
    }

    /** For every row of every table, at both of its ends and with each of its words: what is evaluated is what stands in the cell. */
    @TestFactory
    Stream<DynamicTest> every_row_answers_for_its_own_ends_and_words() {
        return HouseFixture.shipped().sheets().stream().map(sheet -> DynamicTest.dynamicTest(sheet.title(), () -> sheet.grids().forEach(grid -> {
            for (GridRow row : grid.rows()) {
                rowAnswers(sheet, grid, row);
            }
        })));
    }

    private static void rowAnswers(Sheet sheet, Grid grid, GridRow row) {
        BigDecimal step = new BigDecimal("0.000001");
        BigDecimal from = row.heights().interval().orElseThrow().from().add(row.heights().above() ? step : BigDecimal.ZERO);
        BigDecimal to = row.heights().interval().orElseThrow().to().subtract(row.heights().upTo() ? BigDecimal.ZERO : step);
        for (BigDecimal height : List.of(from, to)) {
            for (Map<String, Object> inputs : inputs(grid, row)) {
                inputs.put("height", height);
                Object answer = evaluated(sheet.title(), grid.name(), inputs);
                for (int i = 0; i < row.results().size(); i++) {
                    Result result = grid.results().get(i);
                    Object value = answer instanceof Map<?, ?> several ? several.get(result.name()) : answer;
                    String as = sheet.title() + ", " + grid.name() + ", " + inputs;
                    if (result.kind() == Result.Kind.NUMBER) {
                        double amount = Double.parseDouble(row.results().get(i));
                        double foot = row.heights().interval().orElseThrow().from().doubleValue();
                        double expected = row.growing() && i == 0 ? amount * height.doubleValue() * height.doubleValue() / (foot * foot) : amount;
                        assertThat(((BigDecimal) value).doubleValue()).as(as).isCloseTo(expected, within(1e-9));
                    } else {
                        assertThat(String.valueOf(value)).as(as).isEqualTo(row.results().get(i));
                    }
                }
            }
        }
    }

    /** One case for each word of each column that the row is about; the other columns take their first. */
    private static List<Map<String, Object>> inputs(Grid grid, GridRow row) {
        Map<String, Object> first = new HashMap<>(Map.of("fullness", "medium", "seen from", "wall", "abundance", "generous"));
        for (int c = 0; c < grid.columns().size(); c++) {
            first.put(grid.columns().get(c).name(), words(grid, row, c).get(0));
        }
        List<Map<String, Object>> all = new ArrayList<>(List.of(first));
        for (int c = 0; c < grid.columns().size(); c++) {
            for (String word : words(grid, row, c)) {
                Map<String, Object> other = new HashMap<>(first);
                other.put(grid.columns().get(c).name(), word);
                all.add(other);
            }
        }
        return all;
    }

    private static List<String> words(Grid grid, GridRow row, int column) {
        return row.choices().get(column).isEmpty() ? grid.columns().get(column).choices() : row.choices().get(column);
    }

    private static Object evaluated(String title, String decision, Map<String, Object> inputs) {
        DMNModel model = runtime.getModels().stream().filter(m -> m.getName().equals(title)).findFirst().orElseThrow();
        DMNContext context = runtime.newContext();
        inputs.forEach(context::set);
        DMNResult result = runtime.evaluateByName(model, context, decision);
        assertThat(result.getMessages(DMNMessage.Severity.ERROR, DMNMessage.Severity.WARN)).isEmpty();
        DMNDecisionResult answer = result.getDecisionResultByName(decision);
        assertThat(answer.getEvaluationStatus()).isEqualTo(DMNDecisionResult.DecisionEvaluationStatus.SUCCEEDED);
        return answer.getResult();
    }
}
