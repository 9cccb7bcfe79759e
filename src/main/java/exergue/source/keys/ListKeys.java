package exergue.source.keys;

import exergue.finding.NearMiss;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Parsed;
import exergue.measure.Reading;
import exergue.measure.ReadingParser;
import exergue.model.Reference.Relation;
import exergue.model.Written;
import exergue.source.list.ColumnContent;
import exergue.source.list.ListColumn;
import exergue.source.list.ListPlan;
import exergue.source.shape.Block;
import exergue.source.shape.Fields;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ListOf;
import exergue.source.shape.MapOf;
import exergue.source.shape.ShapeCodes;
import exergue.source.shape.Site;
import exergue.source.shape.Text;
import exergue.source.shape.TextOr;
import exergue.source.shape.Texts;
import exergue.source.yaml.Scalar;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** lists/&lt;id&gt;.yaml, or the file of its name beside a list: how the list is read. */
final class ListKeys {

    /** Encodings that every Java has, as their standards name them. */
    private static final List<String> ENCODINGS =
            List.of("utf-8", "utf-16", "windows-1252", "windows-1250", "windows-1251", "windows-1253");
    private static final Map<String, Character> MARKS = Map.of("comma", ',', "semicolon", ';', "tab", '\t');

    private static final Text<Written<String>> AS_IT_STANDS = new Text<>("words", List.of(), "", false,
            (scalar, site) -> Optional.of(new Written<>(scalar.text(), scalar.place())), (site, place) -> new Written<>("", place));
    private static final Text<Written<String>> HEADING = new Text<>("heading", List.of(), "", false, AS_IT_STANDS.conversion(),
            AS_IT_STANDS.standIn());
    private static final Text<Written<String>> SIGN = new Text<>("sign", List.of(), "", false, AS_IT_STANDS.conversion(),
            AS_IT_STANDS.standIn());
    private static final Text<Written<String>> WORD = new Text<>("word of the list", List.of(), "", false, AS_IT_STANDS.conversion(),
            AS_IT_STANDS.standIn());
    private static final Text<Written<String>> ANSWER = new Text<>("answer", List.of(), "", false, ListKeys::answer,
            AS_IT_STANDS.standIn());
    private static final Text<Written<String>> CONTENT = Texts.choice(ColumnContent.words(), word -> word);

    /** As a key: what a row says of every coin. */
    private static final Text<Written<String>> CONTENT_KEY = new Text<>("what a column can hold", ColumnContent.words(), "", false,
            ListKeys::content, AS_IT_STANDS.standIn());

    private static final MapOf<Written<String>> SIGNS = new MapOf<>(ANSWER, SIGN);
    private static final TextOr<ListColumn> COLUMN = new TextOr<>(CONTENT,
            word -> ListColumn.of(ColumnContent.of(word.value()).orElseThrow(), word.place()), column());

    private static final Keys KEYS = new Keys("how a list is read");

    private static final Key<Optional<Written<String>>> ENCODING = KEYS.may("encoding", Texts.choice(ENCODINGS, word -> word),
            "The encoding the list is saved in. Without it UTF-8 and UTF-16 are told by their bytes, and what is neither is taken "
                    + "for Windows-1252 and said to be.", "windows-1252");
    private static final Key<Optional<Written<Character>>> MARK = KEYS.may("cells-parted-by",
            Texts.choice(List.of("comma", "semicolon", "tab"), MARKS::get),
            "What stands between the cells of a row. Without it, whichever gives the most even rows.", "semicolon");
    private static final Key<Optional<Written<Integer>>> HEADINGS = KEYS.may("headings-in-row", Texts.WHOLE_NUMBER,
            "The row of the sheet that has the headings, counted from 1. Without it, the first that looks so.", "3");
    private static final Key<Optional<Written<String>>> BY = KEYS.may("by", Texts.ID,
            "The measuring convention its figures were taken under, from conventions.yaml.", "bench-2024");
    private static final Key<Optional<Written<Boolean>>> DECIMAL_MARK = KEYS.may("decimal-mark",
            Texts.choice(List.of("point", "comma"), "comma"::equals),
            "The decimal mark in the list, where it is not that of the convention: a spreadsheet may have changed it.", "comma");
    private static final Key<Optional<Written<String>>> IDS = KEYS.may("ids", AS_IT_STANDS,
            "The ids of new coins: a pattern with what columns hold in braces. It must be there, unless a column holds the id.",
            "tm-{inventory number}");
    private static final Key<Map<String, Written<String>>> EVERY_ROW = KEYS.or("every-row", new MapOf<>(AS_IT_STANDS, CONTENT_KEY), "",
            "What holds for every coin of the list, where its row says nothing else.", "{collection: town-museum, type: owl-drachm}");
    private static final Key<Map<String, Written<String>>> ALL_SIGNS = KEYS.or("signs", SIGNS, "",
            "What stands in the list where there is no figure, and what it means: “missing: why”, “not applicable: why”, “illegible: why”, "
                    + "“left out” or “as above”. “empty” is an empty cell.", "{'-': 'missing: not weighed', empty: left out}");
    private static final Key<List<Written<String>>> ROWS_LEFT_OUT = KEYS.or("rows-left-out", new ListOf<>(AS_IT_STANDS), "",
            "How rows begin that are no coins: sums, means, headings in between.", "[Total, Mean weight]");
    private static final Key<Map<String, ListColumn>> COLUMNS = KEYS.must("columns", new MapOf<>(COLUMN, HEADING),
            "The columns by their headings, and what each holds: " + String.join(", ", ColumnContent.words()) + ". A second column of the "
                    + "same heading is “heading (2)”; one without a heading goes by its letter, “column F”.",
            "{Inv.: inventory number, Wt: {holds: weight, unit: g}, Remarks: left out}");

    private static final Block<ListPlan> BLOCK = KEYS.block(ListKeys::bind);

    static final FileKind<ListPlan> FILE = new FileKind<>("list", FileKind.LISTS,
            "How a list of somebody else’s is read by the command enter: what its columns hold. It may also lie beside the list, "
                    + "wherever that is.", BLOCK);

    private ListKeys() { }

    private static ListPlan bind(Fields f) {
        return new ListPlan(new ListPlan.Layout(f.get(ENCODING), f.get(MARK), f.get(HEADINGS), f.get(ROWS_LEFT_OUT)), f.get(BY),
                f.get(DECIMAL_MARK), f.get(IDS), f.get(EVERY_ROW), f.get(ALL_SIGNS), f.get(COLUMNS), f.place());
    }

    private static Block<ListColumn> column() {
        Keys keys = new Keys("a column");
        Key<Written<String>> holds = keys.must("holds", CONTENT, "What its cells are.", "weight");
        Key<Optional<Written<String>>> unit = keys.may("unit", AS_IT_STANDS,
                "The unit of its figures, where a figure has none and it is not that of the convention.", "g");
        Key<Optional<Written<String>>> by = keys.may("by", Texts.ID, "Who measured, where it is not who measured the rest.", "hallam-1931");
        Key<Optional<Written<String>>> byIn = keys.may("by-in", HEADING, "The heading of the column that says for each row who measured.",
                "weighed by");
        Key<Optional<Written<String>>> secondIn = keys.may("second-in", HEADING,
                "For diameters: the heading of the column with the other diameter of a flan that is not round; both become 18 x 17 mm.", "Diam. 2");
        Key<Optional<Written<String>>> work = keys.may("work", Texts.WORK, "For references: the work, by its id.", "hallam-1931");
        Key<Written<Relation>> relation = keys.or("relation", Texts.oneOf(List.of(Relation.values()), Relation::words), "same type",
                "For references: how what is cited relates to the coin.", "this coin");
        Key<Optional<Written<String>>> splitAt = keys.may("split-at", AS_IT_STANDS,
                "What stands between several references, provenances or damages in one cell.", "';'");
        Key<Optional<Written<String>>> introducedBy = keys.may("introduced-by", AS_IT_STANDS,
                "Words to go before the text of each cell, so that a reader of the note knows whose it is.", "'The Museum’s ticket:'");
        Key<Map<String, Written<String>>> words = keys.or("words", new MapOf<>(AS_IT_STANDS, WORD), "",
                "Words of the list, and what they are in the catalogue.", "{AR: silver}");
        Key<Map<String, Written<String>>> signs = keys.or("signs", SIGNS, "", "Signs that mean something else in this column.",
                "{empty: 'not applicable: uniface'}");
        return keys.block(f -> new ListColumn(ColumnContent.of(f.get(holds).value()).orElseThrow(),
                new ListColumn.Hand(f.get(unit), f.get(by), f.get(byIn), f.get(secondIn)),
                new ListColumn.Cited(f.get(work), new Written<>(f.get(relation).value().words(), f.get(relation).place())),
                new ListColumn.CellText(f.get(splitAt), f.get(introducedBy), f.get(words)), f.get(signs), f.place()));
    }

    private static Optional<Written<String>> content(Scalar key, Site site) {
        if (ColumnContent.of(key.text()).isEmpty()) {
            site.report(ShapeCodes.UNKNOWN_WORD, key.place(), "“" + key.text() + "” is not something that a coin of a list can have.",
                    NearMiss.question(key.text(), ColumnContent.words())
                            + "The words are " + String.join(", ", ColumnContent.words()) + ".");
        }
        return Optional.of(new Written<>(key.text(), key.place()));
    }

    /** What a sign means: one of two words, or the reason why there is no figure. */
    private static Optional<Written<String>> answer(Scalar scalar, Site site) {
        String text = scalar.text();
        List<String> others = List.of(ListPlan.LEFT_OUT, ListPlan.AS_ABOVE);
        boolean reason = ReadingParser.parse(Kind.WEIGHT, text, Convention.UNDECLARED) instanceof Parsed.Accepted accepted
                && !(accepted.reading() instanceof Reading.Read);
        if (!reason && !others.contains(text)) {
            site.report(ShapeCodes.UNKNOWN_WORD, scalar.place(), "“" + text + "” does not say what the sign “" + site.key() + "” means.",
                    NearMiss.question(text, others)
                            + "Write 'missing: why', 'not applicable: why' or 'illegible: why' in quotation marks; or left out, if "
                            + "nothing is to be said of it; or as above.");
            return Optional.empty();
        }
        return Optional.of(new Written<>(text, scalar.place()));
    }
}
