package exergue.review.words;

import exergue.measure.Slip;
import exergue.review.change.EntryChange;
import exergue.review.change.FieldChange;
import exergue.review.change.Kinship;
import exergue.review.change.Remark;
import exergue.review.change.Subject;
import exergue.review.content.FieldWords;
import exergue.review.content.Said;
import exergue.review.content.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Changes of entries in words. */
public final class Sentences {

    /** As a reviewer would pencil it into the margin. */
    private static final Map<Slip, String> SUSPICIONS = Map.of(Slip.OTHER_UNIT, "another unit?",
            Slip.DECIMAL_POINT, "decimal point?", Slip.DIGITS_SWAPPED, "digits exchanged?", Slip.DIGIT_MISREAD, "digit misread?",
            Slip.MIRRORED, "mirror?", Slip.UP_AND_DOWN, "half a turn?");

    /** What is said of a coin that is new or gone; the rest stands in its file. */
    private static final List<String> TELLING = List.of("type", "measured.weight", "measured.diameter", "measured.axis",
            "holding.collection", "holding.number", "find.spot", "find.number", "mint", "issue", "denomination", "metal");

    private Sentences() { }

    /** "no. 42 (ark-042)", "type ark-t05", "house style" */
    public static String name(Subject subject) {
        if (subject.number().isPresent()) {
            return "no. " + subject.number().get() + " (" + subject.id() + ")";
        }
        return subject.id().isEmpty() ? subject.section().all() : subject.section().one() + " " + subject.id();
    }

    /** Over what is said of an entry; with what it was called before, if that has changed. */
    public static String heading(EntryChange change) {
        String name = name(change.subject());
        if (change instanceof EntryChange.Added) {
            return name + " added";
        } else if (change instanceof EntryChange.TakenOut) {
            return name + " taken out";
        }
        EntryChange.Altered altered = (EntryChange.Altered) change;
        Optional<Integer> before = altered.before().number();
        if (altered.renamed()) {
            return name + ", formerly " + before.map(number -> "no. " + number + " (" + altered.before().id() + ")")
                    .orElse(altered.before().id());
        }
        return before.equals(change.subject().number()) ? name
                : name + ", formerly " + before.map(number -> "no. " + number).orElse("without a number");
    }

    /** One for each thing that is said otherwise; of an entry that is new or gone, what tells it from others. */
    public static List<String> of(EntryChange change) {
        Section section = change.subject().section();
        if (change instanceof EntryChange.Altered altered) {
            List<String> sentences = new ArrayList<>();
            altered.fields().forEach(field -> sentences.addAll(of(section, field)));
            return sentences.isEmpty() ? List.of("renamed, and nothing else") : sentences;
        }
        String telling = change.fields().stream().filter(field -> TELLING.contains(field.field().path()))
                .map(field -> FieldWords.of(section, field.field()) + " " + said(field).shown()).collect(Collectors.joining(", "));
        return telling.isEmpty() ? List.of() : List.of(telling);
    }

    private static Said said(FieldChange change) {
        return change.after().or(change::before).orElseThrow();
    }

    private static List<String> of(Section section, FieldChange change) {
        String words = FieldWords.of(section, change.field());
        if (change.before().isEmpty() || change.after().isEmpty()) {
            return List.of(words + (change.before().isEmpty() ? " added: " : " taken out: ") + newOrGone(said(change)));
        }
        if (change.before().get() instanceof Said.Texts before && change.after().get() instanceof Said.Texts after) {
            return texts(words, before.texts(), after.texts());
        }
        return List.of(text(words, change) + remarks(change));
    }

    private static String text(String words, FieldChange change) {
        String before = change.before().orElseThrow().shown();
        String after = change.after().orElseThrow().shown();
        if (change.field().path().equals("type") || change.field().path().equals("issue")) {
            return "moved from " + words + " " + before + " to " + after + renumbers(change);
        }
        if (before.equals(after)) {
            return words + " changed"; // what may not be shown
        }
        boolean plain = change.after().get() instanceof Said.Figure || isWord(before) && isWord(after);
        return words + " " + (plain ? before + " → " + after : TextWords.change(before, after)) + renumbers(change);
    }

    private static String renumbers(FieldChange change) {
        return change.remarks().stream().filter(Remark.Renumbers.class::isInstance).map(Remark.Renumbers.class::cast)
                .filter(remark -> remark.numbers() > 0).map(Sentences::renumbers).collect(Collectors.joining());
    }

    private static String renumbers(Remark.Renumbers remark) {
        String numbers = remark.numbers() + (remark.numbers() == 1 ? " number" : " numbers");
        return ": " + (remark.only() ? numbers + (remark.numbers() == 1 ? " changes" : " change")
                : "alone this would change " + numbers);
    }

    /** A figure or a single word needs no marks around it. */
    private static boolean isWord(String text) {
        return !text.isBlank() && TextWords.isShort(text) && (text.indexOf(' ') < 0 || Character.isDigit(text.charAt(0)));
    }

    private static String newOrGone(Said said) {
        String shown = said.shown();
        return isWord(shown) ? shown : TextWords.beginning(shown);
    }

    /** Paragraphs one by one; of short lists both as a whole. */
    private static List<String> texts(String words, List<String> before, List<String> after) {
        boolean isShort = TextWords.isShort(String.join("; ", before)) && TextWords.isShort(String.join("; ", after));
        if (isShort) {
            return List.of(words + " " + String.join("; ", before) + " → " + String.join("; ", after));
        }
        boolean prose = words.equals("note") || words.equals("text");
        return TextWords.changes(prose ? words + ", paragraph" : words + ",", before, after);
    }

    private static String remarks(FieldChange change) {
        List<String> remarks = change.remarks().stream().filter(remark -> !(remark instanceof Remark.Renumbers))
                .map(Sentences::of).toList();
        return remarks.isEmpty() ? "" : " (" + String.join("; ", remarks) + ")";
    }

    public static String of(Remark remark) {
        if (remark instanceof Remark.Suspect suspect) {
            return SUSPICIONS.get(suspect.slip());
        } else if (remark instanceof Remark.PrintedAlike alike) {
            return "printed as before: " + alike.printed();
        }
        if (remark instanceof Remark.Renumbers renumbers) {
            return renumbers.numbers() + " numbers change by this alone";
        }
        Remark.Precision precision = (Remark.Precision) remark;
        return "now printed " + precision.after() + " where it was " + precision.before() + ": precision "
                + (precision.lost() ? "lost" : "gained");
    }

    /** "no. 12 (ark-012) was split into no. 12 (ark-012) and no. 13 (ark-012b)" */
    public static String of(Kinship kinship) {
        if (kinship instanceof Kinship.Split split) {
            return name(split.from()) + " was split into " + names(split.into());
        }
        if (kinship instanceof Kinship.Exchanged exchanged) {
            return "each of " + names(exchanged.after()) + " says now what the other said: were they changed round?";
        }
        Kinship.Joined joined = (Kinship.Joined) kinship;
        return names(joined.from()) + " were joined into " + name(joined.into());
    }

    static String names(List<Subject> subjects) {
        List<String> names = subjects.stream().map(Sentences::name).toList();
        return names.size() < 2 ? String.join("", names)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }
}
