package exergue.source;

import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Written;
import exergue.source.keys.FileKind;
import exergue.source.shape.Desk;
import exergue.source.shape.MapOf;
import exergue.source.shape.Site;
import exergue.source.text.Conflict;
import exergue.source.text.Notebook;
import exergue.source.text.SourceText;
import exergue.source.text.TextCodes;
import exergue.source.text.TextReader;
import exergue.source.yaml.ConflictedEntry;
import exergue.source.yaml.Scalar;
import exergue.source.yaml.Value;
import exergue.source.yaml.YamlReader;
import java.io.IOException;
import java.util.Optional;

/** One YAML file to what it stands for. */
final class EntryReader {

    private final TextReader texts;
    private final Notebook notebook;

    EntryReader(TextReader texts, Notebook notebook) {
        this.texts = texts;
        this.notebook = notebook;
    }

    /** Empty where the file cannot be used at all; the reason is in the notebook then. */
    <T> Optional<T> read(FileKind<T> kind, String file, Desk desk) throws IOException {
        Optional<YamlReader.Read> read = values(file).filter(YamlReader.Read::understood);
        if (read.isEmpty()) {
            notebook.leaveUnread(file);
            return Optional.empty();
        }
        return bound(kind, file, read.get(), desk);
    }

    private Optional<YamlReader.Read> values(String file) throws IOException {
        Optional<SourceText> text = texts.read(file);
        Optional<Conflict> conflict = text.flatMap(Conflict::in);
        conflict.ifPresent(found -> ConflictedEntry.explain(found).forEach(notebook::add));
        return conflict.isPresent() ? Optional.empty() : text.map(read -> YamlReader.read(read, notebook));
    }

    private <T> Optional<T> bound(FileKind<T> kind, String file, YamlReader.Read read, Desk desk) {
        if (read.value().isEmpty()) {
            if (isEntry(kind)) {
                notebook.leaveUnread(file);
                notebook.add(Finding.of(TextCodes.EMPTY_FILE, Place.ofFile(file), "", "There is nothing in this file.",
                        "Fill it in, or delete the file."));
            }
            return Optional.empty();
        }
        return kind.wanted().bind(read.value().get(), site(kind, file, desk));
    }

    /** The text of one key, without a word on anything else in the file: it will be read again. */
    Optional<String> glance(String file, String key) throws IOException {
        Optional<SourceText> text = texts.read(file);
        if (text.isEmpty() || !(YamlReader.read(text.get(), new Notebook()).value().orElse(null) instanceof Value.Entries found)) {
            return Optional.empty();
        }
        return found.entries().stream().filter(entry -> entry.key().text().equals(key))
                .map(Value.Entry::value).filter(Scalar.class::isInstance).map(value -> ((Scalar) value).text()).findFirst();
    }

    /** A file of lists may be empty, or hold only comments: then there is none of what it lists. */
    private static boolean isEntry(FileKind<?> kind) {
        return !(kind.wanted() instanceof MapOf<?>) && kind != FileKind.HOUSE_STYLE;
    }

    /**
     * What stands for a file that cannot be used or is not there: its id, and nothing else. So what points to it
     * does not have to be reported as well.
     */
    <T> T standIn(FileKind<T> kind, String file, Desk desk) {
        return kind.wanted().standIn(site(kind, file, desk), Place.ofFile(file));
    }

    private static Site site(FileKind<?> kind, String file, Desk desk) {
        int dot = file.lastIndexOf('.');
        String name = file.substring(file.lastIndexOf('/') + 1, dot);
        return Site.ofFile(desk, kind.wanted(), new Written<>(name, Place.ofFile(file)));
    }
}
