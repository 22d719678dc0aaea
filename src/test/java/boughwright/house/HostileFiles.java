package boughwright.house;

import boughwright.rulebook.RulebookFixture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Two hundred files that somebody might send to a shop, twenty kinds of ten each, always the same. */
final class HostileFiles {

    /**
     * @param data whether its tables can be read, so that it comes out as plain numbers and words; all others are refused
     */
    record Hostile(String title, String name, byte[] bytes, boolean data) {

        @Override
        public String toString() {
            return title;
        }
    }

    static final String SHEET = "sizing/body-ribbon.dmn";
    private static final String NAME = "body-ribbon.dmn";
    private static final SortedMap<String, String> SHIPPED = RulebookFixture.texts();
    private static final String OUTPUT = "<outputEntry><text>0.45</text></outputEntry>";
    private static final String INPUT = "<inputEntry><text>[3 .. 5)</text></inputEntry>";
    private static final String REASON = "A full tree is wider to cross.";
    private static final String BEFORE_DIAGRAM = "  <dmndi:DMNDI>";
    private static final String AFTER_ABOUT = "</description>\n";

    private final Canary canary;
    private final Random random = new Random(20_261_214);
    private final List<Hostile> files = new ArrayList<>();

    private HostileFiles(Canary canary) {
        this.canary = canary;
    }

    static List<Hostile> of(Canary canary) {
        HostileFiles all = new HostileFiles(canary);
        all.functionsInCells();
        all.literalExpressions();
        all.knowledgeModels();
        all.boxedExpressions();
        all.imports();
        all.javaFunctions();
        all.extensions();
        all.languages();
        all.entityBombs();
        all.externalEntities();
        all.inclusionsAndLookalikes();
        all.tooMuch();
        all.codeInArchives();
        all.strayingNames();
        all.zipBombs();
        all.brokenArchives();
        all.otherEncodings();
        all.numbersOfAnEdition();
        all.shapeOfAnEdition();
        all.markup();
        return List.copyOf(all.files);
    }

    /** Ten FEEL expressions, each of which does what it should not as soon as an engine evaluates it. */
    static List<String> expressions(Canary canary) {
        String sing = external("x", Canary.class.getName(), "sing(java.lang.String)", "\"tweet\"");
        String set = external("x, y", "java.lang.System", "setProperty(java.lang.String, java.lang.String)", "\"" + Canary.PROPERTY + "\", \"1\"");
        String touch = external("x", Canary.class.getName(), "touch(java.lang.String)", "\"" + canary.folder().resolve("egg").toString().replace("\\", "/")
                + "\"");
        String ring = external("x", Canary.class.getName(), "ring(java.lang.String)", "\"" + canary.port() + "\"");
        return List.of(sing, set, touch, ring, "for i in 1..2 return " + sing, "some x in [1, 2] satisfies " + sing + " = \"tweet\"",
                "every x in [1, 2] satisfies " + sing + " = \"tweet\"", "if " + touch + " = null then 1 else 2", "[" + ring + "][1]", set + " = null");
    }

    private static String external(String parameters, String type, String signature, String arguments) {
        return "{f: function(" + parameters + ") external {java: {class: \"" + type + "\", method signature: \"" + signature + "\"}}, r: f(" + arguments
                + ")}.r";
    }

    /** The shipped table with an expression in the result of its first row. */
    static String inOutput(String expression) {
        return swapped(OUTPUT, "<outputEntry><text>" + escaped(expression) + "</text></outputEntry>");
    }

    private void functionsInCells() {
        for (int i = 0; i < 5; i++) {
            dmn("expression " + (i + 1) + " in a result", inOutput(expression(i)));
        }
        for (int i = 5; i < 10; i++) {
            dmn("expression " + (i + 1) + " in a condition", swapped(INPUT, "<inputEntry><text>" + escaped(expression(i)) + "</text></inputEntry>"));
        }
    }

    private void literalExpressions() {
        for (int i = 0; i < 10; i++) {
            dmn("expression " + (i + 1) + " as a decision of its own", added("<decision id=\"more\" name=\"More\"><variable name=\"More\"/><literalExpression>"
                    + text(expression(i)) + "</literalExpression></decision>"));
        }
    }

    private void knowledgeModels() {
        for (int i = 0; i < 5; i++) {
            dmn("expression " + (i + 1) + " in a business knowledge model", added("<businessKnowledgeModel id=\"k\" name=\"k\"><variable name=\"k\"/>"
                    + "<encapsulatedLogic><literalExpression>" + text(expression(i)) + "</literalExpression></encapsulatedLogic></businessKnowledgeModel>"));
        }
        for (int i = 5; i < 10; i++) {
            dmn("a business knowledge model that calls itself, with expression " + (i + 1),
                    added("<businessKnowledgeModel id=\"k\" name=\"k\"><variable name=\"k\"/>"
                    + "<encapsulatedLogic><formalParameter name=\"n\" typeRef=\"number\"/><literalExpression>" + text("k(n + 1) + " + expression(i))
                    + "</literalExpression></encapsulatedLogic><knowledgeRequirement id=\"r\"><requiredKnowledge href=\"#k\"/></knowledgeRequirement>"
                    + "</businessKnowledgeModel>"));
        }
    }

    private void boxedExpressions() {
        String literal = "<literalExpression>" + text(expression(0)) + "</literalExpression>";
        Map<String, String> boxes = new LinkedHashMap<>();
        boxes.put("an invocation", "<invocation><literalExpression><text>k</text></literalExpression><binding><parameter name=\"x\"/>" + literal
                + "</binding></invocation>");
        boxes.put("a context", "<context><contextEntry><variable name=\"x\"/>" + literal + "</contextEntry></context>");
        boxes.put("a list", "<list>" + literal + "</list>");
        boxes.put("a relation", "<relation><column name=\"x\"/><row>" + literal + "</row></relation>");
        boxes.put("a loop", "<for iteratorVariable=\"i\"><in><literalExpression><text>1..999999999</text></literalExpression></in><return>" + literal
                + "</return></for>");
        boxes.put("some", "<some iteratorVariable=\"i\"><in>" + literal + "</in><satisfies>" + literal + "</satisfies></some>");
        boxes.put("every", "<every iteratorVariable=\"i\"><in>" + literal + "</in><satisfies>" + literal + "</satisfies></every>");
        boxes.put("a filter", "<filter><in>" + literal + "</in><match>" + literal + "</match></filter>");
        boxes.put("a condition", "<conditional><if>" + literal + "</if><then>" + literal + "</then><else>" + literal + "</else></conditional>");
        boxes.put("a function", "<functionDefinition><formalParameter name=\"x\"/>" + literal + "</functionDefinition>");
        boxes.forEach((title, box) -> dmn(title + " as a decision", added("<decision id=\"more\" name=\"More\"><variable name=\"More\"/>" + box
                + "</decision>")));
    }

    private void imports() {
        String web = "http://127.0.0.1:" + canary.port() + "/";
        String disk = canary.secret().toUri().toString();
        List<String> targets = List.of(web + "model.dmn", disk, "model.pmml", "classpath:boughwright/text/messages.properties", "jar:" + web + "a.jar!/b.dmn");
        for (String target : targets) {
            for (String type : List.of("https://www.omg.org/spec/DMN/20230324/MODEL/", "http://www.dmg.org/PMML-4_4")) {
                dmn("an import of " + target.replaceAll(":\\d+", "") + " as " + type, swapped(AFTER_ABOUT, AFTER_ABOUT
                        + "  <import name=\"other\" namespace=\"other\" importType=\""
                        + type + "\" locationURI=\"" + target + "\"/>\n"));
            }
        }
    }

    private void javaFunctions() {
        List<String> calls = List.of("java.lang.Runtime|getRuntime()", "java.lang.System|exit(int)",
                "java.lang.System|setProperty(java.lang.String,java.lang.String)",
                Canary.class.getName() + "|sing(java.lang.String)", Canary.class.getName() + "|touch(java.lang.String)", Canary.class.getName()
                        + "|ring(java.lang.String)",
                "java.lang.Class|forName(java.lang.String)", "java.nio.file.Files|createFile(java.nio.file.Path)",
                        "javax.naming.InitialContext|doLookup(java.lang.String)",
                "java.lang.Thread|sleep(long)");
        for (String call : calls) {
            String[] parts = call.split("\\|");
            dmn("a Java function that calls " + call.replace('|', '.'),
                    added("<businessKnowledgeModel id=\"k\" name=\"k\"><variable name=\"k\"/><encapsulatedLogic kind=\"Java\">"
                    + "<formalParameter name=\"x\"/><context><contextEntry><variable name=\"class\"/><literalExpression><text>\"" + parts[0]
                    + "\"</text></literalExpression></contextEntry><contextEntry><variable name=\"method signature\"/><literalExpression><text>\"" + parts[1]
                    + "\"</text></literalExpression></contextEntry></context></encapsulatedLogic></businessKnowledgeModel>"));
        }
    }

    private void extensions() {
        for (int i = 0; i < 5; i++) {
            data("expression " + (i + 1) + " among the extensions of a file", swapped(AFTER_ABOUT, AFTER_ABOUT + "  <extensionElements><literalExpression>"
                    + text(expression(i))
                    + "</literalExpression></extensionElements>\n"));
        }
        String script = "<x:script xmlns:x=\"urn:x\" language=\"groovy\">new File('" + canary.folder() + "/groovy').createNewFile()</x:script>";
        data("a script among the extensions of a table", swapped("<variable name=\"Base\"", "<extensionElements>" + script
                + "</extensionElements><variable name=\"Base\""));
        data("a script among the extensions of a row", swapped("<rule>\n        <inputEntry><text>[3 .. 5)", "<rule><extensionElements>" + script
                + "</extensionElements>\n        <inputEntry><text>[3 .. 5)"));
        data("a script among the extensions of a type", swapped("<itemDefinition name=\"Height\">", "<itemDefinition name=\"Height\"><extensionElements>"
                + script
                + "</extensionElements>"));
        data("a script in the drawing", swapped("<dmndi:DMNDiagram ", script + "<dmndi:DMNDiagram "));
        data("an include among the extensions", swapped(AFTER_ABOUT, AFTER_ABOUT
                + "<extensionElements><xi:include xmlns:xi=\"http://www.w3.org/2001/XInclude\" href=\""
                + canary.secret().toUri() + "\" parse=\"text\"/></extensionElements>"));
    }

    private void languages() {
        List<String> languages = List.of("javascript", "http://www.ecma-international.org/ecma-262", "groovy", "java", "python", "mvel", "drools", "juel",
                "http://www.w3.org/1999/XPath", "feel; javascript");
        for (int i = 0; i < 10; i++) {
            String language = " expressionLanguage=\"" + languages.get(i) + "\"";
            String code = "java.lang.System.setProperty('" + Canary.PROPERTY + "', '1')";
            dmn("cells in " + languages.get(i), switch (i % 3) {
                case 0 -> swapped("<definitions ", "<definitions" + language + " ").replace("<text>0.45</text>", "<text>" + code + "</text>");
                case 1 -> swapped(OUTPUT, "<outputEntry" + language + "><text>" + code + "</text></outputEntry>");
                default -> swapped(INPUT, "<inputEntry" + language + "><text>" + code + "</text></inputEntry>");
            });
        }
    }

    private void entityBombs() {
        for (int levels : List.of(3, 6, 10, 30)) {
            StringBuilder laughs = new StringBuilder("<!ENTITY l0 \"ha\">");
            for (int i = 1; i <= levels; i++) {
                laughs.append("<!ENTITY l").append(i).append(" \"").append(("&l" + (i - 1) + ";").repeat(10)).append("\">");
            }
            doctype("laughs of " + levels + " levels", "[" + laughs + "]", "&l" + levels + ";");
        }
        doctype("one long entity told ten thousand times", "[<!ENTITY a \"" + "a".repeat(50_000) + "\">]", "&a;".repeat(10_000));
        doctype("an entity within itself", "[<!ENTITY a \"&b;\"><!ENTITY b \"&a;\">]", "&a;");
        doctype("parameter entities that laugh", "[<!ENTITY % a \"ha\"><!ENTITY % b \"%a;%a;%a;\"><!ENTITY % c \"<!ENTITY d '%b;'>\">%c;]", "&d;");
        doctype("an entity that is a cell of code", "[<!ENTITY a \"</text></outputEntry><outputEntry><text>1\">]", "&a;");
        doctype("attributes by default", "[<!ATTLIST outputEntry expressionLanguage CDATA \"javascript\">]", "1");
        dmn("an entity that nobody has declared", swapped(OUTPUT, "<outputEntry><text>&boom;</text></outputEntry>"));
    }

    private void externalEntities() {
        String disk = canary.secret().toUri().toString();
        String web = "http://127.0.0.1:" + canary.port() + "/x";
        for (Map.Entry<String, String> target : Map.of("a file", disk, "a server", web).entrySet().stream().sorted(Map.Entry.comparingByKey()).toList()) {
            String where = target.getValue();
            doctype("an entity out of " + target.getKey(), "[<!ENTITY a SYSTEM \"" + where + "\">]", "&a;");
            doctype("a public entity out of " + target.getKey(), "[<!ENTITY a PUBLIC \"-//X//Y\" \"" + where + "\">]", "&a;");
            doctype("a parameter entity out of " + target.getKey(), "[<!ENTITY % a SYSTEM \"" + where + "\">%a;]", "1");
            doctype("a document type out of " + target.getKey(), "SYSTEM \"" + where + "\"", "1");
            dmn("a schema out of " + target.getKey() + " with an entity in an attribute", "<!DOCTYPE definitions [<!ENTITY a SYSTEM \"" + where + "\">]>\n"
                    + plain().replace("<definitions ", "<definitions xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" xsi:schemaLocation=\"x "
                    + where + "\" ")
                    .replace("name=\"Rolls of body ribbon\"", "name=\"&a;\""));
        }
    }

    private void inclusionsAndLookalikes() {
        String disk = canary.secret().toUri().toString();
        String include = "<xi:include xmlns:xi=\"http://www.w3.org/2001/XInclude\" href=\"" + disk + "\" parse=\"text\"/>";
        dmn("an include in a result", swapped(OUTPUT, "<outputEntry><text>" + include + "</text></outputEntry>"));
        dmn("an include of a decision", added(include));
        dmn("an include of a page of the web", added(include.replace(disk, "http://127.0.0.1:" + canary.port() + "/")));
        data("a style sheet to go by", swapped("?>\n", "?>\n<?xml-stylesheet type=\"text/xsl\" href=\"http://127.0.0.1:" + canary.port() + "/x.xsl\"?>\n"));
        dmn("a decision of another namespace", added("<x:decision xmlns:x=\"urn:x\" name=\"Base\"/>"));
        dmn("a decision of an older DMN", added("<x:decision xmlns:x=\"http://www.omg.org/spec/DMN/20151101/dmn.xsd\" name=\"Base\"/>"));
        dmn("a row of another namespace", swapped("<annotation name=\"reason\"/>\n",
                "<annotation name=\"reason\"/><rule xmlns=\"urn:x\"><inputEntry><text>-</text></inputEntry></rule>"));
        dmn("a text of another namespace", swapped(OUTPUT, "<outputEntry><text xmlns=\"urn:x\">" + escaped(expression(0)) + "</text></outputEntry>"));
        dmn("a file of a namespace that looks like DMN", plain().replace("https://www.omg.org/spec/DMN/20230324/MODEL/",
                "https://www.omg.org.example/spec/DMN/20230324/MODEL/"));
        dmn("a style sheet that calls itself a table", "<xsl:stylesheet xmlns:xsl=\"http://www.w3.org/1999/XSL/Transform\" version=\"1.0\"/>");
    }

    private void tooMuch() {
        zip("a cell of 10 MB", Map.of(SHEET, swapped(OUTPUT, "<outputEntry><text>" + "9".repeat(10_000_000) + "</text></outputEntry>")));
        zip("a bound of two million digits", Map.of(SHEET, swapped("[3..20]", "[3.." + "9".repeat(1_900_000) + "]")));
        zip("a list of words with a million spaces in it", Map.of(SHEET, swapped("\"sparse\", ", "\"sparse\"" + " ".repeat(1_000_000) + "x, ")));
        String column = "n".repeat(900_000);
        zip("a column of a name of a million letters, wrong in ten thousand rows", Map.of(SHEET,
                "<definitions xmlns=\"https://www.omg.org/spec/DMN/20230324/MODEL/\""
                + " namespace=\"n\" name=\"n\"><decision name=\"Base\"><variable name=\"Base\" typeRef=\"number\"/><decisionTable><input><inputExpression><text>" + column
                + "</text></inputExpression></input><output/>"
                + "<rule><inputEntry><text>1</text></inputEntry><outputEntry><text>x</text></outputEntry></rule>".repeat(10_000)
                + "</decisionTable></decision></definitions>"));
        String words = IntStream.range(0, 240).mapToObj(i -> "\"a\"").collect(Collectors.joining(","));
        zip("half a million words that no column knows", Map.of(SHEET, swapped("<rule>\n        <inputEntry><text>\"sparse\"", ("<rule><inputEntry><text>"
                + words
                + "</text></inputEntry><outputEntry><text>1</text></outputEntry></rule>").repeat(1_800) + "<rule>\n        <inputEntry><text>\"sparse\"")));
        for (int deep : List.of(41, 1_000, 100_000)) {
            zip("elements " + deep + " deep", Map.of(SHEET, added("<extensionElements>" + "<a>".repeat(deep) + "</a>".repeat(deep) + "</extensionElements>")));
        }
        zip("an edition.json a hundred thousand deep", Map.of("edition.json", "[".repeat(100_000) + "]".repeat(100_000)));
        String palette = "{\"id\":\"p%d\",\"title\":\"\",\"main\":\"#000000\",\"second\":\"#000000\",\"spark\":\"#000000\",\"ground\":\"#000000\"}";
        String look = "{\"id\":\"l\",\"title\":\"\",\"blurb\":\"\",\"palette\":\"p39999\",\"textures\":[],\"finishes\":[]}";
        zip("forty thousand looks and palettes", Map.of("edition.json", "{\"palettes\":[" + IntStream.range(0,
                40_000).mapToObj(palette::formatted).collect(Collectors.joining(","))
                + "],\"looks\":[" + String.join(",", Collections.nCopies(40_000, look)) + "]}"));
    }

    private void codeInArchives() {
        byte[] type = {(byte) 0xCA, (byte) 0xFE, (byte) 0xBA, (byte) 0xBE, 0, 0, 0, 61};
        List<String> names = List.of("style/evil.drl", "safety/evil.drl", "sizing/evil.drl", "boughwright/house/Canary.class", "lib/evil.jar",
                "META-INF/MANIFEST.MF",
                "META-INF/services/java.nio.file.spi.FileSystemProvider", "META-INF/kmodule.xml", "sizing/evil.js", "sizing/body-ribbon.dmn.sh");
        for (String name : names) {
            Map<String, byte[]> files = shipped();
            files.put(name, name.endsWith(".class") ? type
                    : bytes("rule \"evil\" when then System.setProperty(\"" + Canary.PROPERTY + "\", \"1\"); end"));
            archive("an edition with " + name, files, false);
        }
    }

    private void strayingNames() {
        List<String> names = List.of("../evil.dmn", "sizing/../../evil.dmn", "/etc/evil.dmn", "C:\\evil.dmn", "..\\..\\sizing\\evil.dmn",
                "sizing/evil.dmn\u0000.drl",
                "sizing/\u2024\u2024/evil.dmn", "..%2f..%2fevil.dmn", "../sizing/body-ribbon.dmn", canary.folder() + "/evil/");
        for (String name : names) {
            Map<String, byte[]> files = shipped();
            files.put(name, name.endsWith("/") ? new byte[0] : bytes(plain()));
            archive("an edition with " + name.replaceAll("\\p{C}", "?").replace(canary.folder().toString(), "the canary's folder"), files, false);
        }
    }

    private void zipBombs() {
        byte[] noughts = new byte[50_000_000];
        bomb("50 MB of noughts as a table", SHEET, noughts);
        bomb("50 MB of noughts as edition.json", "edition.json", noughts);
        bomb("50 MB of noughts as a README", "README.txt", noughts);
        bomb("50 MB of noughts under a name of no edition", "evil.bin", noughts);
        bomb("50 MB of noughts in a folder", "sizing/", noughts);
        byte[] spaces = new byte[50_000_000];
        Arrays.fill(spaces, (byte) ' ');
        bomb("50 MB of spaces as a table", SHEET, spaces);
        Map<String, byte[]> thirty = new LinkedHashMap<>();
        IntStream.range(0, 30).forEach(i -> thirty.put("sizing/table-" + (char) ('a' + i % 26) + (char) ('a' + i / 26) + ".dmn", new byte[1_000_000]));
        archive("30 MB in thirty tables", thirty, false);
        byte[] inner = zipped(Map.of("sizing/a.dmn", noughts));
        archive("an archive in an archive", Map.of("sizing/evil.zip", zipped(Map.of("evil.zip", inner))), false);
        archive("an archive in an archive that calls itself a table", Map.of(SHEET, inner), false);
        byte[] lying = zipped(Map.of(SHEET, noughts));
        int central = indexOf(lying, new byte[] {'P', 'K', 1, 2}, 0);
        put(lying, central + 24, 10);
        put(lying, 22, 10);
        add("50 MB that say to be ten bytes", "edition.zip", lying, false);
    }

    private void brokenArchives() {
        byte[] whole = zipped(shipped());
        Map<String, byte[]> many = new LinkedHashMap<>();
        IntStream.range(0, 5_000).forEach(i -> many.put("sizing/" + Integer.toString(i, 26).chars().mapToObj(c -> String.valueOf((char) (c < 'a' ? c - '0'
                + 'a' : c + 10)))
                .collect(Collectors.joining()) + "-x.dmn", new byte[0]));
        archive("five thousand files", many, false);
        byte[] twice = zipped(new LinkedHashMap<>(Map.of(SHEET, bytes(plain()), "sizing/BODY-ribbon.dmn", bytes(inOutput(expression(0))))));
        for (int at = indexOf(twice, bytes("BODY"), 0); at >= 0; at = indexOf(twice, bytes("BODY"), at)) {
            System.arraycopy(bytes("body"), 0, twice, at, 4);
        }
        add("one name twice", "edition.zip", twice, false);
        archive("one name twice, once in a folder", Map.of(SHEET, bytes(plain()), "edition/" + SHEET, bytes(inOutput(expression(0)))), false);
        int second = indexOf(whole, new byte[] {'P', 'K', 3, 4}, 4);
        add("cut off after its first file", "edition.zip", Arrays.copyOf(whole, second), false);
        add("cut off within the head of its second file", "edition.zip", Arrays.copyOf(whole, second + 10), false);
        add("cut off before its list of files", "edition.zip", Arrays.copyOf(whole, indexOf(whole, new byte[] {'P', 'K', 1, 2}, 0)), false);
        add("cut off somewhere", "edition.zip", Arrays.copyOf(whole, 200 + random.nextInt(1_000)), false);
        byte[] locked = whole.clone();
        locked[6] |= 1;
        add("locked with a password", "edition.zip", locked, false);
        byte[] changed = whole.clone();
        for (int i = 0; i < 20; i++) {
            changed[300 + random.nextInt(500)] ^= (byte) (1 + random.nextInt(255));
        }
        add("with some bytes changed", "edition.zip", changed, false);
        byte[] noise = new byte[20_000];
        random.nextBytes(noise);
        add("noise", "edition.zip", noise, false);
    }

    private void otherEncodings() {
        for (Charset charset : List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, Charset.forName("UTF-32"), Charset.forName("IBM1047"))) {
            add("a table in " + charset, NAME, plain().replace("UTF-8", charset.name()).replace("wider", "wïder").getBytes(charset), false);
        }
        add("a table in ISO-8859-1", NAME, plain().replace("UTF-8", "ISO-8859-1").replace("wider", "wïder").getBytes(StandardCharsets.ISO_8859_1), false);
        add("a table of noughts", NAME, new byte[5_000], false);
        add("an overlong oblique in a table", NAME, joined(bytes("<a>"), new byte[] {(byte) 0xC0, (byte) 0xAF}, bytes("</a>")), false);
        add("half a surrogate in a table", NAME, joined(bytes("<a>"), new byte[] {(byte) 0xED, (byte) 0xA0, (byte) 0x80}, bytes("</a>")), false);
        archive("an edition.json in UTF-16", Map.of("edition.json", SHIPPED.get("edition.json").getBytes(StandardCharsets.UTF_16)), false);
        add("an empty table", NAME, new byte[0], false);
    }

    private void numbersOfAnEdition() {
        number("a number beyond all bounds", "tall-tree", "1e999999999", false);
        number("a number of a thousand million digits behind the point", "score-thrift", "1e-999999999", false);
        number("a nought of a thousand million digits", "runs-with-end-bow", "0e999999999", true);
        number("an exponent beyond all integers", "tall-tree", "1e99999999999", false);
        number("a number of a hundred thousand digits", "tall-tree", "9".repeat(100_000), false);
        number("a distance from heat below its floor of safety", "heat-distance", "0.1", false);
        number("a circuit loaded beyond its ceiling of safety", "circuit-share", "100", false);
        number("a text for a number", "tall-tree", "\"java.lang.Runtime\"", false);
        number("no number at all", "tall-tree", "NaN", false);
        number("an object for a number", "tall-tree", "{\"@class\": \"" + Canary.class.getName() + "\"}", false);
    }

    private void shapeOfAnEdition() {
        edition("keys that come twice", "\"numbers\": {", "\"numbers\": {\"tall-tree\": 1},\n  \"numbers\": {", true);
        edition("paths that lead out", "\"sizing/light-bulbs.dmn\"", "\"../../../etc/passwd\", \"http://127.0.0.1:" + canary.port() + "/a.dmn\"", true);
        edition("rules out of the web", "\"style/topper.drl\"", "\"http://127.0.0.1:" + canary.port() + "/evil.drl\"", true);
        edition("a look of a palette that is not there", "\"palette\": \"copper-and-cream\"", "\"palette\": \"<b>none</b>\"", false);
        edition("a look whose name is a path", "\"id\": \"woodland\"", "\"id\": \"../../woodland\"", true);
        edition("a look whose name is markup", "\"id\": \"woodland\"", "\"id\": \"<img src=x onerror=alert(1)>\"", true);
        edition("a title that is markup", "\"title\": \"Winter 26\"", "\"title\": \"<script>alert(1)</script>\"", true);
        edition("a list for an object", "\"numbers\": {", "\"numbers\": [], \"was\": {", false);
        edition("a colour that is a script", "\"main\": \"#", "\"main\": \"javascript:#", false);
        archive("an edition.json that is a list of classes", Map.of("edition.json", bytes("[\"" + Canary.class.getName() + "\", {\"class\": 1}]")), false);
    }

    private void markup() {
        List<String> texts = markedUp(canary);
        for (int i = 0; i < texts.size(); i++) {
            String text = texts.get(i);
            boolean quoted = i % 2 == 1 && !text.contains("]]>");
            data(reasonTitle(text), swapped(REASON, quoted ? "<![CDATA[" + text + "]]>" : escaped(text)));
        }
    }

    /** What reasons say that would be more than words to a page, a spreadsheet, a database or an XML file that took them as they are. */
    static List<String> markedUp(Canary canary) {
        return List.of("<script>alert(1)</script>", "\"><img src=x onerror=alert(1)>", "]]><text>1</text><![CDATA[", "&lt;b&gt; &amp;amp; &#60;i&#62;",
                "' or 1=1; drop table house_edition; --", "</text></annotationEntry></rule><rule>", "=cmd|' /C calc'!A0",
                        "${jndi:ldap://127.0.0.1/a} #{7*7} {{7*7}}",
                expressions(canary).get(0), "\u202Egnp.exe \uD83C\uDF84 <?php system('id') ?> <!ENTITY a 'b'>");
    }

    static String reasonTitle(String words) {
        return shortened("a reason that says " + words.replaceAll("\\p{C}", "?"));
    }

    private static String shortened(String title) {
        return title.length() > 120 ? title.substring(0, 119) + "…" : title;
    }

    private String expression(int i) {
        return expressions(canary).get(i);
    }

    private void number(String title, String word, String value, boolean data) {
        archive(title, Map.of("edition.json", bytes(SHIPPED.get("edition.json").replaceFirst("(\"" + word + "\": )[0-9.]+", "$1" + value))), data);
    }

    private void edition(String title, String part, String other, boolean data) {
        String json = SHIPPED.get("edition.json");
        if (!json.contains(part)) {
            throw new AssertionError("edition.json has no " + part);
        }
        archive("an edition with " + title, Map.of("edition.json", bytes(json.replaceFirst(Pattern.quote(part), Matcher.quoteReplacement(other)))), data);
    }

    private void doctype(String title, String type, String cell) {
        dmn(title, swapped("<definitions ", "<!DOCTYPE definitions " + type + ">\n<definitions ").replace(OUTPUT, "<outputEntry><text>" + cell
                + "</text></outputEntry>"));
    }

    private void dmn(String title, String text) {
        add(title, NAME, bytes(text), false);
    }

    private void data(String title, String text) {
        add(title, NAME, bytes(text), true);
    }

    private void zip(String title, Map<String, String> texts) {
        Map<String, byte[]> packed = new LinkedHashMap<>();
        texts.forEach((name, text) -> packed.put(name, bytes(text)));
        archive(title, packed, false);
    }

    private void bomb(String title, String name, byte[] content) {
        archive(title, Map.of(name, content), false);
    }

    private void archive(String title, Map<String, byte[]> content, boolean data) {
        add(title, "edition.zip", zipped(content), data);
    }

    private void add(String title, String name, byte[] content, boolean data) {
        files.add(new Hostile(shortened(title), name, content, data));
    }

    private static Map<String, byte[]> shipped() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        SHIPPED.forEach((path, text) -> {
            if (!path.endsWith(".drl")) {
                files.put(path, bytes(text));
            }
        });
        return files;
    }

    private static String plain() {
        return SHIPPED.get(SHEET);
    }

    private static String swapped(String part, String other) {
        String text = plain();
        int at = text.indexOf(part);
        if (at < 0) {
            throw new AssertionError(SHEET + " has no " + part);
        }
        return text.substring(0, at) + other + text.substring(at + part.length());
    }

    private static String added(String elements) {
        return swapped(BEFORE_DIAGRAM, elements + "\n" + BEFORE_DIAGRAM);
    }

    private static String text(String expression) {
        return "<text>" + escaped(expression) + "</text>";
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    static byte[] zipped(Map<String, byte[]> files) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
                zip.setLevel(Deflater.BEST_SPEED);
                for (Map.Entry<String, byte[]> file : files.entrySet()) {
                    ZipEntry entry = new ZipEntry(file.getKey());
                    entry.setTime(315_532_800_000L);
                    zip.putNextEntry(entry);
                    zip.write(file.getValue());
                    zip.closeEntry();
                }
            }
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static int indexOf(byte[] bytes, byte[] part, int from) {
        for (int i = from; i <= bytes.length - part.length; i++) {
            if (Arrays.equals(bytes, i, i + part.length, part, 0, part.length)) {
                return i;
            }
        }
        return -1;
    }

    private static void put(byte[] bytes, int at, int value) {
        for (int i = 0; i < 4; i++) {
            bytes[at + i] = (byte) (value >> 8 * i);
        }
    }
}
