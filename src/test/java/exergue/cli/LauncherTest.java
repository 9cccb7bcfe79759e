package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code exergue} that lies beside the jar, with a jar that only says how it was called. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the launcher for Windows is another file")
class LauncherTest {

    private static final Path LAUNCHER = Path.of("src", "main", "launch", "exergue").toAbsolutePath();

    @TempDir
    private Path folder;
    private Path home;

    /** What the jar runs. */
    public static final class Called {

        private Called() { }

        /** Says the settings of Java and the words that it was called with, and ends with 2. */
        public static void main(String[] words) {
            System.out.println(ManagementFactory.getRuntimeMXBean().getInputArguments());
            System.out.println(List.of(words));
            System.exit(2);
        }
    }

    /** @param out of both streams together, so that what Java has to say would show */
    private record Ran(int code, List<String> out) { }

    @BeforeEach
    void install() throws IOException {
        home = Files.createDirectories(folder.resolve("programs of the house (new)"));
        Files.copy(LAUNCHER, home.resolve("exergue"), StandardCopyOption.COPY_ATTRIBUTES);
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Called.class.getName());
        String file = Called.class.getName().replace('.', '/') + ".class";
        try (OutputStream out = Files.newOutputStream(home.resolve("exergue.jar"));
                JarOutputStream jar = new JarOutputStream(out, manifest);
                InputStream called = Called.class.getClassLoader().getResourceAsStream(file)) {
            jar.putNextEntry(new JarEntry(file));
            called.transferTo(jar);
        }
    }

    @Test
    void givesEveryWordOnAndTheExitCodeBack() throws Exception {
        Ran ran = run(home.resolve("exergue"), "reading", "weight", "59.7 grn", "", "*", "$HOME");
        assertEquals("[reading, weight, 59.7 grn, , *, $HOME]", ran.out().get(1));
        assertEquals(2, ran.code());
    }

    @Test
    void setsJavaForALongRunWhereItIsOne() throws Exception {
        Ran ran = run(home.resolve("exergue"), "proof", "catalogue");
        assertEquals("[proof, catalogue]", ran.out().get(1));
        assertFalse(ran.out().get(0).contains("TieredStopAtLevel"), ran.out().get(0));
    }

    @Test
    void setsJavaForAShortRun() throws Exception {
        String settings = run(home.resolve("exergue")).out().get(0);
        assertTrue(settings.contains("-XX:TieredStopAtLevel=1, ") && settings.contains("-XX:+UseParallelGC, "), settings);
    }

    @Test
    void takesTheArchiveBesideIt() throws Exception {
        Files.writeString(home.resolve("exergue.jsa"), "");
        String settings = run(home.resolve("exergue")).out().get(0);
        assertTrue(settings.contains("-XX:SharedArchiveFile=") && settings.contains("(new)/exergue.jsa"), settings);
    }

    @Test
    void anArchiveThatDoesNotFitIsNotSpokenOf() throws Exception {
        Ran without = run(home.resolve("exergue"), "check");
        for (String archive : List.of("", "not an archive", "\0".repeat(100_000))) {
            Files.writeString(home.resolve("exergue.jsa"), archive);
            Ran ran = run(home.resolve("exergue"), "check");
            assertEquals(without.out().subList(1, without.out().size()), ran.out().subList(1, ran.out().size()));
            assertEquals(2, ran.out().size(), () -> ran.out().toString());
            assertEquals(2, ran.code());
        }
    }

    @Test
    void isFoundThroughLinks() throws Exception {
        Path programs = Files.createDirectories(folder.resolve("bin"));
        Path link = Files.createSymbolicLink(programs.resolve("exergue"), home.resolve("exergue"));
        Path relative = Files.createSymbolicLink(folder.resolve("link"), Path.of("bin", "exergue"));
        assertEquals("[check]", run(link, "check").out().get(1));
        assertEquals("[check]", run(relative, "check").out().get(1));
    }

    private static Ran run(Path launcher, String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().remove("EXERGUE_JAVA");
        Process process = builder.start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ran(process.waitFor(), out.lines().toList());
    }
}
