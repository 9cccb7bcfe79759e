package exergue.source.yaml;

import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.source.text.Notebook;
import exergue.source.text.SourceText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * One YAML file to values with places. Works on the event stream, below everything in YAML that could build
 * objects or multiply text: anchors, aliases, tags and merge keys are seen, refused and passed over.
 */
public final class YamlReader {

    /** No entry nests deeper than four; a file that does so far beyond is an attack or an accident. */
    private static final int DEEPEST = 12;

    /** The whole of a value in one pair of curly marks or guillemets, of whatever language. */
    private static final Pattern IN_TYPOGRAPHIC_QUOTES = Pattern.compile("[“”„‟«»‘’‚‹›][^“”„‟«»‘‚‹›]+[“”«»‘’‹›]");

    private static final LoaderOptions OPTIONS = new LoaderOptions();

    private final SourceText source;
    private final Notebook notebook;
    private final Parser events;

    /** Set once and for all: reading such a file to its end could take for ever. */
    private boolean tooDeep;

    private YamlReader(SourceText source, Notebook notebook) {
        this.source = source;
        this.notebook = notebook;
        this.events = new ParserImpl(new StreamReader(source.text()), OPTIONS);
    }

    /** What the file holds; empty where it holds nothing or cannot be understood, which is in the notebook then. */
    public static Read read(SourceText source, Notebook notebook) {
        YamlReader reader = new YamlReader(source, notebook);
        try {
            Optional<Value> value = reader.document();
            return reader.tooDeep ? new Read(Optional.empty(), false) : new Read(value, true);
        } catch (MarkedYAMLException e) {
            notebook.add(SyntaxFaults.finding(e, source));
            return new Read(Optional.empty(), false);
        }
    }

    /** @param value empty for an empty file; @param understood false where the file is not YAML */
    public record Read(Optional<Value> value, boolean understood) { }

    private Optional<Value> document() {
        events.getEvent();
        if (events.checkEvent(Event.ID.StreamEnd)) {
            return Optional.empty();
        }
        events.getEvent();
        Value value = value(events.getEvent(), 0);
        if (tooDeep) {
            return Optional.empty();
        }
        events.getEvent();
        if (events.checkEvent(Event.ID.DocumentStart)) {
            report(YamlCodes.SECOND_DOCUMENT, place(events.peekEvent()),
                    "A line with --- ends the entry here; what follows it would not be read.",
                    "Delete the line with ---, or move what follows into a file of its own.");
        }
        boolean nothing = value instanceof Scalar s && s.isNothing();
        return nothing ? Optional.empty() : Optional.of(value);
    }

    private void report(Code code, Place place, String what, String remedy) {
        notebook.add(Finding.of(code, place, "", what, remedy));
    }

    private Value value(Event event, int depth) {
        refuseReferences(event);
        if (event instanceof ScalarEvent scalar) {
            return scalar(scalar);
        }
        if (event instanceof AliasEvent alias) {
            return Scalar.standIn("", place(alias));
        }
        if (depth == DEEPEST) {
            report(YamlCodes.NESTED_TOO_DEEP, place(event), "Lists and blocks are nested more than " + DEEPEST + " deep here.",
                    "Take out the brackets or indentation that is not needed; no entry needs more than five levels.");
            tooDeep = true;
            return new Value.Items(List.of(), place(event));
        }
        return event.is(Event.ID.SequenceStart) ? items(event, depth) : entries(event, depth);
    }

    private void refuseReferences(Event event) {
        if (event instanceof AliasEvent || event instanceof NodeEvent node && node.getAnchor() != null) {
            String sign = (event instanceof AliasEvent ? "*" : "&") + ((NodeEvent) event).getAnchor();
            report(YamlCodes.ALIAS_REFUSED, place(event),
                    "“" + sign + "” is YAML's way of pointing to another value; entries do not use it.",
                    "Write the value out; if the sign belongs to the text, put the text in quotes: \"" + sign + "\".");
        }
        String tag = event instanceof ScalarEvent scalar ? scalar.getTag()
                : event instanceof CollectionStartEvent start ? start.getTag() : null;
        if (tag != null) {
            report(YamlCodes.TAG_REFUSED, place(event), "“" + tag.replace("tag:yaml.org,2002:", "!!") + "” is a YAML type mark; entries do not use them.",
                    "Delete it; if the exclamation mark belongs to the text, put the text in quotes.");
        }
    }

    private Value items(Event start, int depth) {
        List<Value> values = new ArrayList<>();
        while (!tooDeep && !events.checkEvent(Event.ID.SequenceEnd)) {
            values.add(value(events.getEvent(), depth + 1));
        }
        return new Value.Items(values, place(start, tooDeep ? start : events.getEvent()));
    }

    private Value entries(Event start, int depth) {
        Map<String, Value.Entry> byKey = new LinkedHashMap<>();
        while (!tooDeep && !events.checkEvent(Event.ID.MappingEnd)) {
            Value key = value(events.getEvent(), depth + 1);
            Value value = tooDeep ? key : value(events.getEvent(), depth + 1);
            if (key instanceof Scalar word) {
                keep(new Value.Entry(word, value), byKey);
            } else {
                report(YamlCodes.ODD_KEY, key.place(), "A key is a single word; here stands " + key.name() + ".",
                        "If the brackets belong to the text, put the whole text in quotes.");
            }
        }
        return new Value.Entries(new ArrayList<>(byKey.values()), place(start, tooDeep ? start : events.getEvent()));
    }

    private void keep(Value.Entry entry, Map<String, Value.Entry> byKey) {
        Scalar key = entry.key();
        if (key.plain() && key.text().equals("<<")) {
            report(YamlCodes.MERGE_KEY_REFUSED, key.place(), "“<<” takes over keys from elsewhere; entries do not use it.",
                    "Write the keys out.");
            return;
        }
        Value.Entry first = byKey.putIfAbsent(key.text(), entry);
        if (first != null) {
            notebook.add(Finding.of(YamlCodes.DUPLICATE_KEY, key.place(), "",
                    "The key “" + key.text() + "” stands here a second time; the first is on line "
                            + first.key().place().line() + ".",
                    "Keep one of the two and delete the other.").withRelated(first.key().place(), "the first “" + key.text() + "”"));
        }
    }

    private Scalar scalar(ScalarEvent event) {
        String text = source.composed(event.getValue());
        Place place = place(event);
        return event.isPlain() && IN_TYPOGRAPHIC_QUOTES.matcher(text).matches() ? unquoted(text, place)
                : new Scalar(text, place, event.isPlain(), layout(event, text));
    }

    /** Reported once and read on without the marks, lest a reading in them be refused as well. */
    private Scalar unquoted(String text, Place place) {
        String meant = text.substring(1, text.length() - 1).strip();
        String mark = meant.contains("'") ? "\"" : "'";
        report(YamlCodes.TYPOGRAPHIC_QUOTES, place, "The value " + text + " stands in typographic quotation marks, which are taken as part of it.",
                "Write " + mark + meant + mark + ", with straight marks, or " + meant + " without any. If the marks are to be printed, "
                        + "put straight ones around them: '" + text + "'.");
        return new Scalar(meant, place, false, Scalar.Layout.SCATTERED);
    }

    private Scalar.Layout layout(ScalarEvent event, String text) {
        Mark start = event.getStartMark();
        Mark end = event.getEndMark();
        if (event.isLiteral()) {
            return inLines(start.getLine() + 1, event.getValue(), text);
        }
        int shift = event.isPlain() ? 0 : 1;
        boolean exact = start.getLine() == end.getLine() && !event.isFolded()
                && end.getColumn() - start.getColumn() == text.codePointCount(0, text.length()) + 2 * shift;
        return exact ? new Scalar.Layout(Scalar.Layout.Kind.ON_ONE_LINE, shift) : Scalar.Layout.SCATTERED;
    }

    private Scalar.Layout inLines(int headLine, String raw, String text) {
        if (!raw.equals(text) || raw.isBlank()) {
            return Scalar.Layout.SCATTERED;
        }
        int skip = 0;
        while (raw.startsWith("\n", skip)) {
            skip++;
        }
        int end = raw.indexOf('\n', skip);
        String first = raw.substring(skip, end < 0 ? raw.length() : end);
        String inFile = source.line(headLine + 1 + skip);
        return inFile.endsWith(first)
                ? new Scalar.Layout(Scalar.Layout.Kind.IN_LINES, inFile.length() - first.length()) : Scalar.Layout.SCATTERED;
    }

    private Place place(Event event) {
        return place(event, event);
    }

    private Place place(Event from, Event to) {
        Mark start = from.getStartMark();
        Mark end = to.getEndMark();
        int line = start.getLine() + 1;
        int column = start.getColumn() + 1;
        int length = start.getLine() == end.getLine() ? end.getColumn() - start.getColumn()
                : source.restOfLine(line, column);
        return new Place(source.file(), line, column, length);
    }
}
