package boughwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    private int run(String... args) {
        return new CommandLine(new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8)).run(args);
    }

    private Path brief(String json) throws IOException {
        return Files.writeString(folder.resolve("brief.json"), json);
    }

    private String errors() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void the_example_brief_gives_every_file_and_exit_code_0() throws IOException {
        Path target = folder.resolve("plan");

        assertThat(run("plan", "docs/example-brief.json", "--out", target.toString())).isZero();

        for (String name : new String[] {"proposal.json", "plan.pdf", "front.svg", "left.svg", "right.svg", "picklist.csv"}) {
            assertThat(target.resolve(name)).isNotEmptyFile();
        }
        JsonNode proposal = new ObjectMapper().readTree(target.resolve("proposal.json").toFile());
        assertThat(proposal.at("/kit/budget").asText()).isEqualTo("650.00");
        assertThat(Files.readString(target.resolve("front.svg"))).startsWith("<svg").contains("<title");
        assertThat(Files.readString(target.resolve("picklist.csv")))
                .startsWith("shelf,sku,name,pieces,packs,packSize,unitPrice,price\n");
        assertThat(new String(Files.readAllBytes(target.resolve("plan.pdf")), 0, 5, StandardCharsets.ISO_8859_1)).isEqualTo("%PDF-");
    }

    @Test
    void the_same_brief_gives_the_same_bytes_twice() throws IOException {
        run("plan", "docs/example-brief.json", "--out", folder.resolve("a").toString());
        run("plan", "docs/example-brief.json", "--out", folder.resolve("b").toString());

        for (String name : new String[] {"proposal.json", "plan.pdf", "front.svg", "left.svg", "right.svg", "picklist.csv"}) {
            assertThat(folder.resolve("a").resolve(name)).hasSameBinaryContentAs(folder.resolve("b").resolve(name));
        }
    }

    @Test
    void a_bad_brief_is_exit_code_2_names_field_value_and_mend_and_writes_nothing() throws IOException {
        Path target = folder.resolve("plan");

        assertThat(run("plan", brief("{\"tree\": {\"height\": \"21 ft\"}}").toString(), "--out", target.toString())).isEqualTo(2);

        assertThat(errors()).contains("tree.height", "21 ft", "from 3 ft to 20 ft");
        assertThat(target).doesNotExist();
    }

    @Test
    void a_broken_catalogue_is_exit_code_2_and_names_line_and_column() throws IOException {
        assertThat(run("plan", "docs/example-brief.json", "--out", folder.resolve("plan").toString(),
                "--catalogue", "catalogue-samples/broken.csv")).isEqualTo(2);

        assertThat(errors()).contains("Line ").contains("gtin");
        assertThat(folder.resolve("plan")).doesNotExist();
    }

    @Test
    void a_rulebook_with_a_fault_is_exit_code_2_and_names_file_line_and_mend() throws IOException {
        Path rules = folder.resolve("rules");
        try (var files = Files.walk(Path.of("rules"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = rules.resolve(Path.of("rules").relativize(file));
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        Path sprays = rules.resolve("sizing/sprays.dmn");
        Files.writeString(sprays, Files.readString(sprays).replace("[4 .. 5)", "[4.5 .. 5)"));

        assertThat(run("plan", "docs/example-brief.json", "--out", folder.resolve("plan").toString(), "--rules", rules.toString())).isEqualTo(2);

        assertThat(errors()).contains("sizing/sprays.dmn, line ").contains("leave a gap: no row answers for height from 4 to below 4.5").doesNotContain("RulebookFault");
        assertThat(folder.resolve("plan")).doesNotExist();
    }

    @Test
    void when_no_kit_fits_the_exit_code_is_3_and_the_proposal_holds_the_conflict() throws IOException {
        Path target = folder.resolve("plan");

        assertThat(run("plan", brief("{\"tree\": {\"height\": \"9 ft\"}, \"budget\": \"40.00\"}").toString(), "--out", target.toString()))
                .isEqualTo(3);

        JsonNode proposal = new ObjectMapper().readTree(target.resolve("proposal.json").toFile());
        assertThat(proposal.at("/conflict/wishes/0/id").asText()).isEqualTo("budget");
        assertThat(proposal.has("kit")).isFalse();
        assertThat(target.resolve("plan.pdf")).doesNotExist();
    }

    @Test
    void changes_from_a_file_bend_the_kit_and_faults_in_them_are_exit_code_2() throws IOException {
        Path target = folder.resolve("plan");
        Path changes = Files.writeString(folder.resolve("changes.json"), "{\"dropped\": [\"ornaments\"]}");
        String brief = brief("{\"tree\": {\"height\": \"7 ft\"}}").toString();

        assertThat(run("plan", brief, "--out", target.toString(), "--changes", changes.toString())).isZero();

        JsonNode lines = new ObjectMapper().readTree(target.resolve("proposal.json").toFile()).at("/kit/lines");
        assertThat(lines).isNotEmpty().noneMatch(line -> line.get("layer").asText().equals("ornaments"));
        Files.writeString(changes, "{\"dropped\": [\"roof\"]}");
        assertThat(run("plan", brief, "--out", folder.resolve("other").toString(), "--changes", changes.toString())).isEqualTo(2);
        assertThat(errors()).contains("dropped", "roof", "ornaments");
    }

    @Test
    void another_catalogue_is_chosen_from_when_it_is_named() throws IOException {
        Path target = folder.resolve("plan");

        assertThat(run("plan", brief("{\"tree\": {\"height\": \"7 ft 6 in\"}}").toString(), "--out", target.toString(),
                "--catalogue", "catalogue-samples/small.csv")).isZero();

        String small = Files.readString(Path.of("catalogue-samples/small.csv"));
        JsonNode lines = new ObjectMapper().readTree(target.resolve("proposal.json").toFile()).at("/kit/lines");
        assertThat(lines).isNotEmpty().allSatisfy(line -> assertThat(small).contains(line.get("sku").asText()));
    }

    @Test
    void arguments_that_make_no_sense_are_told_apart() {
        assertThat(run("plan")).isEqualTo(2);
        assertThat(run("plan", "docs/example-brief.json")).isEqualTo(2);
        assertThat(run("plan", "docs/example-brief.json", "--out")).isEqualTo(2);
        assertThat(run("plan", "no-such-file.json", "--out", folder.toString())).isEqualTo(2);
        assertThat(run("plan", "docs/example-brief.json", "--paint", "red", "--out", folder.toString())).isEqualTo(2);

        assertThat(run("plan", folder.toString(), "--out", folder.resolve("x").toString())).isEqualTo(2);
        assertThat(run("plan", "docs/example-brief.json", "--out", "")).isEqualTo(2);
        assertThat(run("plan", "docs/example-brief.json", "--bogus")).isEqualTo(2);
        assertThat(CommandLine.understands("plann", "x") && !CommandLine.understands("--server.port=8081")).isTrue();
        assertThat(run("plann", "docs/example-brief.json")).isEqualTo(2);

        assertThat(errors()).contains("no option --bogus", "no command plann", "is a folder", "--out DIR", "--out needs a value", "no-such-file.json", "--paint");
    }
}
