package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.review.Repositories;
import exergue.review.SmallCatalogue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** States of a catalogue as a person names them. */
class CollateCommandTest {

    @TempDir
    private Path folder;

    private final SmallCatalogue first = new SmallCatalogue();
    private final SmallCatalogue second = first.with("coins/lk-1.yaml", "3.78 g", "3.87 g");

    private static Map<String, String> under(String place, SmallCatalogue catalogue) {
        Map<String, String> files = new TreeMap<>();
        catalogue.files().forEach((path, text) -> files.put(place + "/" + path, text));
        return files;
    }

    private void lay(Path into, SmallCatalogue catalogue) {
        catalogue.files().forEach((path, text) -> {
            try {
                Files.createDirectories(into.resolve(path).getParent());
                Files.writeString(into.resolve(path), text);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private Ran collate(String... words) {
        String[] all = new String[words.length + 3];
        all[0] = "collate";
        System.arraycopy(words, 0, all, 1, words.length);
        all[all.length - 2] = "--source";
        all[all.length - 1] = folder.resolve("book").toString();
        return Ran.command(all);
    }

    @Test
    void twoFolders() {
        lay(folder.resolve("a"), first);
        lay(folder.resolve("b"), second);
        Ran ran = Ran.command("collate", folder.resolve("a").toString(), folder.resolve("b").toString());
        assertEquals(0, ran.code(), ran.all());
        assertTrue(ran.out().contains("weight 3.78 g → 3.87 g (digits exchanged?)"), ran.out());
        assertEquals("", ran.err());
    }

    @Test
    void twoRevisions() {
        Repositories.commit(folder, under("book", first), "v1");
        Repositories.commit(folder, under("book", second), "v2");
        Ran ran = collate("v1", "v2");
        assertEquals(0, ran.code(), ran.all());
        assertTrue(ran.out().matches("(?s)v1 \\([0-9a-f]{10}\\) → v2 \\([0-9a-f]{10}\\)\n.*3\\.87 g.*"), ran.out());
        assertTrue(collate("v2", "v1").out().contains("3.87 g → 3.78 g (digits exchanged?)"));
        assertTrue(collate("v1", "v1").out().contains("No change: every file is the same."));
    }

    @Test
    void aRevisionAndTheFolderAsItIsNow() throws IOException {
        Repositories.commit(folder, under("book", first), "v1");
        assertTrue(collate("HEAD").out().contains("No change: every file is the same."));
        Files.writeString(folder.resolve("book/coins/lk-1.yaml"), second.text("coins/lk-1.yaml"));
        assertTrue(collate("HEAD").out().contains("3.78 g → 3.87 g"));
        Files.writeString(folder.resolve("book/coins/lk-1.yaml"), "# new\n" + first.text("coins/lk-1.yaml"));
        assertTrue(collate("HEAD").out().contains("No change in content: 1 file is only written otherwise."));
    }

    @Test
    void theFolderMayHaveHadAnotherNameThen() {
        Repositories.commit(folder, under("attic", first), "v1");
        Repositories.commit(folder, under("book", second), "v2");
        assertTrue(collate("v1:attic", "v2").out().contains("3.78 g → 3.87 g"));
        Ran lost = collate("v1", "v2");
        assertEquals(ExitCode.USAGE, lost.code());
        assertTrue(lost.err().contains("no catalogue.yaml in the folder “book”") && lost.err().contains("v1:FOLDER"), lost.err());
    }

    @Test
    void whatNobodyKnowsIsAskedBack() {
        Repositories.commit(folder, under("book", first), "spring-2024");
        Ran near = collate("spring-2042");
        assertEquals(ExitCode.USAGE, near.code());
        assertEquals("exergue: “spring-2042” is neither a folder nor a revision of the Git repository. Did you mean “spring-2024”?\n",
                near.err());
        assertTrue(collate("0123456789012345678901234567890123456789").err().contains("fetch the whole"));
        assertTrue(collate("HEAD~1").err().contains("fetch the whole"));
        assertEquals("exergue: The name of a state is empty. Name a folder, a branch, a tag or a commit.\n", collate("HEAD", "").err());
    }

    @Test
    void aRepositoryThatCannotBeReadIsSaidToBeSo() throws IOException {
        Repositories.commit(folder, under("book", first), "v1");
        Files.writeString(folder.resolve(".git/config"), "[core]\n\trepositoryformatversion = 1\n[extensions]\n\tobjectFormat = sha256\n");
        Ran ran = collate("v1");
        assertEquals(ExitCode.BROKEN, ran.code());
        assertTrue(ran.err().contains("names its contents by SHA-256"), ran.err());
    }

    @Test
    void withoutARepositoryOnlyFoldersCanBeNamed() {
        lay(folder.resolve("book"), first);
        Ran ran = collate("HEAD");
        assertEquals(ExitCode.USAGE, ran.code());
        assertTrue(ran.err().contains("lies in no Git repository"), ran.err());
    }

    @Test
    void entriesThatCannotBeReadAreSaidToBeMissing() {
        lay(folder.resolve("book"), first);
        lay(folder.resolve("b"), second.with("coins/lk-2.yaml", "weight: 4.12 g", "weight: heavy"));
        Ran ran = collate(folder.resolve("book").toString(), folder.resolve("b").toString());
        assertEquals(ExitCode.SOURCE_ERRORS, ran.code());
        assertTrue(ran.err().contains("1 error, 0 warnings. The command check lists them."), ran.err());
        assertTrue(ran.out().contains("3.78 g → 3.87 g"), ran.out());
    }

    @Test
    void aCatalogueThatCannotBeReadIsNotCompared() {
        lay(folder.resolve("book"), first);
        lay(folder.resolve("b"), second.with("catalogue.yaml", "title: [Coins\n"));
        Ran ran = collate(folder.resolve("book").toString(), folder.resolve("b").toString());
        assertEquals(ExitCode.SOURCE_ERRORS, ran.code());
        assertTrue(ran.err().contains("Nothing was compared"), ran.err());
    }

    @Test
    void formatsForPeopleAndPrograms() {
        lay(folder.resolve("book"), first);
        lay(folder.resolve("b"), second);
        String[] both = {folder.resolve("book").toString(), folder.resolve("b").toString()};
        assertTrue(collate(both[0], both[1], "--format", "markdown").out().startsWith("## What has changed\n"));
        assertTrue(collate(both[0], both[1], "--format", "json").out().startsWith("{\n  \"tool\": \"Exergue\""));
        assertEquals(ExitCode.USAGE, collate(both[0], both[1], "--format", "html").code());
    }

    @Test
    void aProofIsWrittenWhereItIsWanted() throws IOException {
        lay(folder.resolve("book"), first);
        lay(folder.resolve("b"), second);
        Ran ran = collate(folder.resolve("book").toString(), folder.resolve("b").toString(), "--to", folder.resolve("proof").toString());
        assertEquals(0, ran.code(), ran.all());
        assertTrue(ran.out().endsWith("Proof: " + folder.resolve("proof/collation.pdf") + "\n"), ran.out());
        assertTrue(Files.size(folder.resolve("proof/collation.pdf")) > 1000);
    }
}
