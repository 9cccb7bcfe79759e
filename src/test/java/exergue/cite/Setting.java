package exergue.cite;

import exergue.files.MemoryTree;
import exergue.finding.Findings;
import exergue.model.Catalogue;
import exergue.model.Inline;
import exergue.source.Loaded;
import exergue.source.SourceReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A catalogue of works only, and how they are set. */
final class Setting {

    static final Path WORKS = Path.of("src/test/resources/exergue/cite");

    private final Map<String, byte[]> files = new TreeMap<>();

    Setting() {
        with("catalogue.yaml", "title: Coins\nlanguage: en\nparts: {back: [works]}\n");
    }

    Setting with(String path, String text) {
        files.put(path, text.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    Setting withFile(String path, String name) {
        try {
            files.put(path, Files.readAllBytes(WORKS.resolve(name)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    Setting inStyle(String text) {
        with("styles/own.csl", text);
        return with("catalogue.yaml", "title: Coins\nlanguage: en\nparts: {back: [works]}\ncitation-style: styles/own.csl\n");
    }

    Catalogue catalogue() {
        try {
            Loaded loaded = SourceReader.read(new MemoryTree(files));
            if (!loaded.findings().all().isEmpty()) {
                throw new AssertionError(loaded.findings().all());
            }
            return loaded.catalogue().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    SetWorks set() {
        try {
            return WorksSetter.set(catalogue(), new MemoryTree(files));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One line a work: its sign, and its reference with *italic* and **bold**. */
    String list() {
        SetWorks set = set();
        if (!set.findings().all().isEmpty()) {
            throw new AssertionError(set.findings().all());
        }
        return catalogue().works().values().stream()
                .map(work -> work.sign() + " | " + marked(set.full().get(work.id().value())))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    static String words(Findings findings) {
        return findings.all().stream().map(f -> f.place() + " " + f.code().id() + "\n  " + f.what() + "\n  " + f.remedy() + "\n")
                .collect(Collectors.joining());
    }

    static String marked(List<Inline> runs) {
        StringBuilder words = new StringBuilder();
        for (Inline run : runs) {
            if (run instanceof Inline.Emphasis emphasis) {
                words.append('*').append(marked(emphasis.runs())).append('*');
            } else if (run instanceof Inline.Strong strong) {
                words.append("**").append(marked(strong.runs())).append("**");
            } else if (run instanceof Inline.Words plain) {
                words.append(plain.text());
            } else {
                throw new AssertionError(run);
            }
        }
        return words.toString();
    }
}
