package boughwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A machine that speaks another language, or whose character set is not UTF-8, gives the same plan as any other. */
class BareMachineTest {

    @TempDir
    private Path folder;

    private Path plan(String name, String... options) throws IOException, InterruptedException {
        Path out = folder.resolve(name);
        ProcessBuilder command = new ProcessBuilder();
        command.command().add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.command().addAll(java.util.List.of(options));
        command.command().addAll(java.util.List.of("-cp", System.getProperty("java.class.path"), "boughwright.Boughwright", "plan",
                "docs/example-brief.json", "--out", out.toString()));
        Process process = command.redirectErrorStream(true).redirectOutput(folder.resolve(name + ".log").toFile()).start();
        assertThat(process.waitFor(3, TimeUnit.MINUTES)).isTrue();
        assertThat(process.exitValue()).as(Files.readString(folder.resolve(name + ".log"), java.nio.charset.StandardCharsets.ISO_8859_1)).isZero();
        return out.resolve("proposal.json");
    }

    @Test
    void neither_character_set_nor_language_of_the_machine_changes_a_byte() throws Exception {
        Path usual = plan("usual", "-Dfile.encoding=UTF-8", "-Duser.language=en");
        Path ascii = plan("ascii", "-Dfile.encoding=US-ASCII", "-Duser.language=tr", "-Duser.country=TR");

        assertThat(ascii).hasSameBinaryContentAs(usual);
        assertThat(Files.readString(usual)).contains("maker’s label");
    }
}
