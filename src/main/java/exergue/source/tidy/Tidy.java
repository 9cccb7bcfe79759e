package exergue.source.tidy;

import exergue.files.Tree;
import exergue.source.keys.FileKind;
import exergue.source.text.Conflict;
import exergue.source.text.Notebook;
import exergue.source.text.SourceText;
import exergue.source.text.TextReader;
import exergue.source.yaml.Scalar;
import exergue.source.yaml.Value;
import exergue.source.yaml.YamlReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;
import org.yaml.snakeyaml.scanner.ScannerImpl;
import org.yaml.snakeyaml.tokens.CommentToken;
import org.yaml.snakeyaml.tokens.Token;

/**
 * The files of a tree in one layout. What is written is read back first: if any value, any comment or the order of any list
 * were otherwise, the file stays as it is and is named.
 */
public final class Tidy {

    private final Tree tree;
    private final Map<String, byte[]> rewritten = new TreeMap<>();
    private final List<LeftAlone> leftAlone = new ArrayList<>();

    private Tidy(Tree tree) {
        this.tree = tree;
    }

    /** @param why as a sentence */
    public record LeftAlone(String file, String why) { }

    /** @param rewritten files that were not tidy, as they would be; @param leftAlone files that cannot be tidied */
    public record Tidied(Map<String, byte[]> rewritten, List<LeftAlone> leftAlone) {
        public Tidied {
            rewritten = Collections.unmodifiableMap(new TreeMap<>(rewritten));
            leftAlone = List.copyOf(leftAlone);
        }
    }

    /** Every YAML file that the catalogue is read from; nothing is written. */
    public static Tidied of(Tree tree) throws IOException {
        Tidy tidy = new Tidy(tree);
        for (String file : tree.files()) {
            Optional<FileKind<?>> kind = FileKind.all().stream().filter(one -> one.isFolder()
                    ? file.startsWith(one.where()) && file.endsWith(".yaml") : file.equals(one.where())).findFirst();
            if (kind.isPresent()) {
                tidy.look(file, kind.get());
            }
        }
        return new Tidied(tidy.rewritten, tidy.leftAlone);
    }

    private void look(String file, FileKind<?> kind) throws IOException {
        Notebook notebook = new Notebook();
        Optional<SourceText> text = new TextReader(tree, notebook).read(file);
        if (text.isEmpty() || !notebook.findings().isEmpty() && notebook.findings().hasErrors() || Conflict.in(text.get()).isPresent()) {
            leftAlone.add(new LeftAlone(file, "It has errors; the command check says which."));
            return;
        }
        YamlReader.Read read = YamlReader.read(text.get(), notebook);
        if (!read.understood() || notebook.findings().hasErrors()) {
            leftAlone.add(new LeftAlone(file, "It has errors; the command check says which."));
        } else if (read.value().orElse(null) instanceof Value.Entries) {
            Optional<String> tidied = rewritten(text.get().text(), kind);
            if (tidied.isEmpty()) {
                leftAlone.add(new LeftAlone(file, "Something in it, most likely a comment inside brackets, would be lost. Write the "
                        + "brackets out line by line."));
            } else if (!Arrays.equals(tidied.get().getBytes(StandardCharsets.UTF_8), tree.read(file))) {
                rewritten.put(file, tidied.get().getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    /** A text of an entry in the one layout; empty where anything would be lost. */
    public static Optional<String> rewritten(String text, FileKind<?> kind) {
        return rewritten(text, kind, true).or(() -> rewritten(text, kind, false));
    }

    /** @param broken whether long texts are; the library cannot read every comment that follows one */
    private static Optional<String> rewritten(String text, FileKind<?> kind, boolean broken) {
        Optional<String> once = written(text, kind, broken);
        boolean same = once.isPresent() && value(once.get()).equals(value(text)) && comments(once.get()).equals(comments(text))
                && written(once.get(), kind, broken).equals(once);
        return same ? once : Optional.empty();
    }

    private static Optional<String> written(String text, FileKind<?> kind, boolean broken) {
        LoaderOptions options = new LoaderOptions();
        options.setProcessComments(true);
        try {
            Node node = new Composer(new ParserImpl(new StreamReader(text), options), new Resolver(), options).getSingleNode();
            return node instanceof MappingNode mapping ? Optional.of(EntryWriter.write(mapping, kind.wanted(), broken)) : Optional.empty();
        } catch (YAMLException | ClassCastException e) {
            return Optional.empty(); // the library cannot place every comment
        }
    }

    /** What a text says, with its keys sorted; empty where it does not say it without a fault. */
    static String value(String text) {
        Notebook notebook = new Notebook();
        YamlReader.Read read = YamlReader.read(new SourceText("entry.yaml", text), notebook);
        return notebook.findings().hasErrors() ? "" : read.value().map(Tidy::said).orElse("");
    }

    private static String said(Value value) {
        if (value instanceof Scalar scalar) {
            return scalar.isNothing() && scalar.plain() ? "nothing" : "<" + scalar.text() + ">";
        }
        if (value instanceof Value.Items items) {
            return items.values().stream().map(Tidy::said).collect(Collectors.joining(",", "[", "]"));
        }
        return ((Value.Entries) value).entries().stream().map(entry -> said(entry.key()) + ":" + said(entry.value())).sorted()
                .collect(Collectors.joining(",", "{", "}"));
    }

    /** Every comment, sorted: they move with their keys. */
    public static List<String> comments(String text) {
        LoaderOptions options = new LoaderOptions();
        options.setProcessComments(true);
        ScannerImpl scanner = new ScannerImpl(new StreamReader(text), options);
        List<String> comments = new ArrayList<>();
        while (!scanner.checkToken(Token.ID.StreamEnd)) {
            if (scanner.getToken() instanceof CommentToken comment && !comment.getValue().isBlank()) {
                comments.add(comment.getValue().strip());
            }
        }
        comments.sort(null);
        return comments;
    }
}
