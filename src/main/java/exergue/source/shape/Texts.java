package exergue.source.shape;

import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.finding.Place;
import exergue.model.Phrase;
import exergue.model.Prose;
import exergue.model.Written;
import exergue.source.markdown.MarkdownReader;
import exergue.source.markdown.Usage;
import exergue.source.yaml.Scalar;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** The sorts of text an entry is made of. */
public final class Texts {

    private static final String ID_PATTERN = "[a-z0-9]+([-._][a-z0-9]+)*";
    private static final Pattern ID_SHAPE = Pattern.compile(ID_PATTERN);
    private static final String WORK_PATTERN = "[^\\s,\\[\\]{}]+";
    private static final Pattern WORK_SHAPE = Pattern.compile(WORK_PATTERN);
    private static final Pattern DIGITS = Pattern.compile("[0-9]{1,9}");

    /** Plain text, printed as it stands. */
    public static final Text<Written<String>> WORDS = words("words", "", false);

    /** Plain text that may also be empty, in quotes. */
    public static final Text<Written<String>> WORDS_OR_NONE = words("words", "", true);

    /** The id of another entry. */
    public static final Text<Written<String>> ID = new Text<>("id", List.of(), ID_PATTERN, false, Texts::id, Texts::nothing);

    /** The id of a work: reference managers make ids in ways of their own. */
    public static final Text<Written<String>> WORK = new Text<>("id of a work", List.of(), WORK_PATTERN, false, Texts::workId, Texts::nothing);

    /** The id of the entry itself: the name of its file. */
    public static final Text<Written<String>> OWN_ID =
            new Text<>("id", List.of(), ID_PATTERN, false, Texts::ownId, (site, place) -> site.entry());

    public static final Text<Written<Integer>> WHOLE_NUMBER = wholeNumber("12");

    /** How many decimals are printed. */
    public static final Text<Written<Integer>> DECIMALS = wholeNumber("2");

    public static final Text<Written<Boolean>> YES_OR_NO = new Text<>("yes or no", List.of("yes", "no"), "", false,
            Texts::yesOrNo, (site, place) -> new Written<>(true, place));

    /** One line of Markdown. */
    public static final Text<Phrase> LINE = new Text<>("line", List.of(), "", false,
            (scalar, site) -> Optional.of(MarkdownReader.line(site.manuscript(scalar), scalar.place())),
            (site, place) -> new Phrase(List.of(), place));

    /** Paragraphs of Markdown. */
    public static final Text<List<Prose>> PROSE = new Text<>("prose", List.of(), "", false,
            (scalar, site) -> Optional.of(MarkdownReader.note(site.manuscript(scalar))), (site, place) -> List.of());

    /** A reading, not yet understood: what it means hangs on the convention it was taken under. Never one that must be. */
    public static final Text<Scalar> READING = new Text<>("reading", List.of(), "", true,
            (scalar, site) -> Optional.of(scalar), (site, place) -> Scalar.standIn("", place));

    private Texts() { }

    private static Text<Written<String>> words(String name, String pattern, boolean mayBeEmpty) {
        return new Text<>(name, List.of(), pattern, mayBeEmpty,
                (scalar, site) -> {
                    Usage.look(site.manuscript(scalar), scalar.text(), 0);
                    return Optional.of(written(scalar, scalar.text()));
                }, Texts::nothing);
    }

    private static Written<String> nothing(Site site, Place place) {
        return new Written<>("", place);
    }

    /** One of an enumeration's own words, but the one that stands for none. */
    public static <T> Text<Written<T>> oneOf(List<T> values, Function<T, String> word, String but) {
        List<T> offered = values.stream().filter(v -> !word.apply(v).equals(but)).toList();
        List<String> words = offered.stream().map(word).toList();
        return choice(words, w -> offered.get(words.indexOf(w)));
    }

    public static <T> Text<Written<T>> oneOf(List<T> values, Function<T, String> word) {
        return oneOf(values, word, "");
    }

    /** One of these words, each with a meaning. */
    public static <T> Text<Written<T>> choice(List<String> words, Function<String, T> meaning) {
        return new Text<>("one of " + String.join(", ", words), words, "", false,
                (scalar, site) -> word(scalar, words, site).map(word -> written(scalar, meaning.apply(word))),
                (site, place) -> new Written<>(meaning.apply(words.get(0)), place));
    }

    private static Optional<String> word(Scalar scalar, List<String> words, Site site) {
        if (words.contains(scalar.text())) {
            return Optional.of(scalar.text());
        }
        String all = "“" + String.join("”, “", words) + "”";
        Finding finding = Finding.of(ShapeCodes.UNKNOWN_WORD, scalar.place(), site.path(),
                "“" + scalar.text() + "” is not a word that “" + site.key() + "” knows.",
                NearMiss.question(scalar.text(), words)
                        + "The words are " + all + ".");
        site.report(scalar.layout().kind() == Scalar.Layout.Kind.ON_ONE_LINE
                ? NearMiss.certain(scalar.text(), words).map(near -> finding.withEditAt(scalar.at(0, scalar.text().codePointCount(0,
                        scalar.text().length())), scalar.text(), near)).orElse(finding) : finding);
        return Optional.empty();
    }

    static <T> Written<T> written(Scalar scalar, T value) {
        return new Written<>(value, scalar.place());
    }

    private static Optional<Written<String>> id(Scalar scalar, Site site) {
        if (!ID_SHAPE.matcher(scalar.text()).matches()) {
            String safe = scalar.text().strip().toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-")
                    .replaceAll("^-|-$", "");
            site.report(ShapeCodes.NOT_AN_ID, scalar.place(),
                    "“" + scalar.text() + "” is not an id: ids have small letters a to z, digits, and hyphens or full stops between them.",
                    safe.isEmpty() ? "Give it a short name in such letters." : "Write “" + safe + "”, here and wherever it is named.");
        }
        return Optional.of(written(scalar, scalar.text()));
    }

    private static Optional<Written<String>> workId(Scalar scalar, Site site) {
        if (!WORK_SHAPE.matcher(scalar.text()).matches()) {
            site.report(ShapeCodes.NOT_AN_ID, scalar.place(),
                    "“" + scalar.text() + "” is not the id of a work: there are no spaces, commas, brackets or braces in it.",
                    "Write it without them, here and wherever it is named.");
        }
        return Optional.of(written(scalar, scalar.text()));
    }

    private static Optional<Written<String>> ownId(Scalar scalar, Site site) {
        String fileName = site.entry().value();
        if (!scalar.text().equals(fileName)) {
            site.report(ShapeCodes.ID_NOT_FILE_NAME, scalar.place(),
                    "The id is “" + scalar.text() + "”, but the file is called " + fileName + ".yaml.",
                    "Rename the file to " + scalar.text() + ".yaml, or write id: " + fileName + ".");
        }
        return id(scalar, site);
    }

    private static Optional<Written<Boolean>> yesOrNo(Scalar scalar, Site site) {
        if (scalar.text().equals("true") || scalar.text().equals("false")) {
            return Optional.of(written(scalar, scalar.text().equals("true")));
        }
        return word(scalar, List.of("yes", "no"), site).map(word -> written(scalar, word.equals("yes")));
    }

    private static Text<Written<Integer>> wholeNumber(String example) {
        return new Text<>("whole number", List.of(), "[0-9]{1,9}", false, (scalar, site) -> wholeNumber(scalar, site, example),
                (site, place) -> new Written<>(0, place));
    }

    private static Optional<Written<Integer>> wholeNumber(Scalar scalar, Site site, String example) {
        if (DIGITS.matcher(scalar.text()).matches()) {
            return Optional.of(written(scalar, Integer.valueOf(scalar.text())));
        }
        site.report(ShapeCodes.NOT_A_WHOLE_NUMBER, scalar.place(),
                "“" + site.key() + "” wants a whole number, and here stands “" + scalar.text() + "”.",
                "Write it in digits only, such as " + example + ".");
        return Optional.empty();
    }
}
