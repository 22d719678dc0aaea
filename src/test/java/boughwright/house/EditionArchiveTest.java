package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.needs.HouseNumber;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;

class EditionArchiveTest {

    private static final HouseRules CHANGED = HouseFixture.shipped().withNumber(HouseNumber.TALL_TREE, "8 ft")
            .changeGrid("body-ribbon", Grid.BASE, g -> g.change(1, r -> r.withResult(0, "1.25").withReason("Ribbon & bows, \"twice\" <round>: {quantity}.")));

    @Test
    void what_is_exported_and_imported_again_is_the_same() {
        EditionArchive.Reading.Read read = read("winter.zip", archive(CHANGED), HouseFixture.shipped());
        assertThat(read.rules()).isEqualTo(CHANGED).isNotEqualTo(HouseFixture.shipped());
        assertThat(read.title()).isEqualTo("Winter 27");
        assertThat(read.lacking()).isEmpty();
    }

    @Test
    void the_same_edition_gives_the_same_bytes() {
        assertThat(archive(CHANGED)).isEqualTo(archive(EditionTexts.draft(EditionTexts.json(CHANGED)))).isNotEqualTo(archive(HouseFixture.shipped()));
    }

    @Test
    void the_archive_holds_a_readme_edition_json_and_a_table_for_every_page() throws IOException {
        Map<String, String> files = unzipped(archive(CHANGED));
        List<String> names = new ArrayList<>(List.of("README.txt", "edition.json"));
        CHANGED.sheets().forEach(s -> names.add(s.file()));
        assertThat(files).containsOnlyKeys(names);
        assertThat(files.get("README.txt")).contains("Winter 27", "For the windows.", "sizing/body-ribbon.dmn", "DMN 1.5");
    }

    @Test
    void an_archive_wrapped_in_a_folder_is_accepted() throws IOException {
        Map<String, byte[]> wrapped = new LinkedHashMap<>();
        wrapped.put("Winter 27/", new byte[0]);
        wrapped.put("Winter 27/sizing/", new byte[0]);
        unzipped(archive(CHANGED)).forEach((name, text) -> wrapped.put("Winter 27/" + name, text.getBytes(StandardCharsets.UTF_8)));
        assertThat(read("winter.zip", HostileFiles.zipped(wrapped), HouseFixture.shipped()).rules()).isEqualTo(CHANGED);
    }

    @Test
    void an_archive_of_one_table_leaves_all_else_as_it_was_and_says_what_it_lacks() {
        byte[] one = HostileFiles.zipped(Map.of("sizing/body-ribbon.dmn", texts(CHANGED).get("sizing/body-ribbon.dmn").getBytes(StandardCharsets.UTF_8)));
        HouseRules before = HouseFixture.shipped().withNumber(HouseNumber.TAIL, "9 in");
        EditionArchive.Reading.Read read = read("ribbon.zip", one, before);
        assertThat(read.rules()).isEqualTo(before.changeSheet("body-ribbon", s -> CHANGED.sheet("body-ribbon").orElseThrow()));
        assertThat(read.lacking()).hasSize(10).doesNotContain("body-ribbon").contains("clusters", "light-bulbs");
        assertThat(read.title()).isEmpty();
    }

    @Test
    void a_single_table_is_read_with_the_mark_that_some_programs_put_before_it() {
        String text = "\uFEFF" + texts(CHANGED).get("sizing/body-ribbon.dmn");
        assertThat(read("C:\\Downloads\\body-ribbon.dmn", text.getBytes(StandardCharsets.UTF_8), HouseFixture.shipped()).rules().sheet("body-ribbon"))
                .isEqualTo(CHANGED.sheet("body-ribbon"));
    }

    @Test
    void a_table_that_asks_for_the_height_twice_is_refused_since_only_one_would_count() {
        String column = "<input><inputExpression typeRef=\"Height\"><text>height</text></inputExpression></input>";
        String row = "<inputEntry><text>-</text></inputEntry>\n        <outputEntry><text>\"up\"";
        String table = texts(CHANGED).get("sizing/body-ribbon.dmn");
        int policy = table.indexOf("<decision id=\"policy\"");
        String twice = table.substring(0, policy) + table.substring(policy).replace(column, column + column).replace(row,
                "<inputEntry><text>[3 .. 5)</text></inputEntry>" + row);
        assertThat(faults("body-ribbon.dmn", twice.getBytes(StandardCharsets.UTF_8))).singleElement().asString()
                .endsWith("Policy: The column \"height\" stands in this table twice. Put both into one, or take one out.");
    }

    @Test
    void a_file_that_is_no_archive_is_named_as_such() {
        assertThat(faults("hello.txt", "hello".getBytes(StandardCharsets.UTF_8))).containsExactly("The file is no zip archive and no DMN file.");
        assertThat(faults("empty.zip", HostileFiles.zipped(Map.of("README.txt",
                new byte[0])))).containsExactly("The archive holds no tables and no edition.json.");
    }

    @Test
    void a_number_below_its_floor_of_safety_is_named_with_its_bounds() {
        String json = texts(CHANGED).get("edition.json").replaceFirst("(\"heat-distance\" : )[0-9.]+", "$10.3");
        assertThat(faults("edition.zip", HostileFiles.zipped(Map.of("edition.json", json.getBytes(StandardCharsets.UTF_8)))))
                .containsExactly("edition.json cannot be read: heat-distance runs from 0.9144 to 6.096, not 0.3");
    }

    @Test
    void an_archive_that_was_cut_off_is_damaged_even_where_its_tables_are_whole() {
        byte[] whole = archive(CHANGED);
        for (int length : List.of(whole.length - 1, whole.length - 30, whole.length - 600)) {
            assertThat(faults("winter.zip", Arrays.copyOf(whole, length))).containsExactly("The archive is damaged. Export it again.");
        }
    }

    private static SortedMap<String, String> texts(HouseRules rules) {
        return EditionTexts.of(rules, "winter-27", "Winter 27", HouseFixture.rulebook().edition());
    }

    private static byte[] archive(HouseRules rules) {
        return EditionArchive.zip(texts(rules), "Winter 27", "For the windows.");
    }

    private static EditionArchive.Reading.Read read(String name, byte[] bytes, HouseRules before) {
        EditionArchive.Reading reading = EditionArchive.read(name, bytes, before, HouseFixture.rulebook().edition());
        assertThat(reading).isInstanceOf(EditionArchive.Reading.Read.class);
        return (EditionArchive.Reading.Read) reading;
    }

    private static List<String> faults(String name, byte[] bytes) {
        return ((EditionArchive.Reading.Faulty) EditionArchive.read(name, bytes, HouseFixture.shipped(), HouseFixture.rulebook().edition())).faults();
    }

    private static Map<String, String> unzipped(byte[] bytes) throws IOException {
        Map<String, String> files = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return files;
    }
}
