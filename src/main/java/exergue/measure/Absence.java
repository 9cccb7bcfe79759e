package exergue.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A text that says why there is no figure: {@code missing: why}, {@code not applicable: why}, {@code illegible: why}. */
final class Absence {

    private static final Pattern ABSENT = Pattern.compile("(?i) *(missing|not +applicable|illegible)\\b *(?<colon>:)?(?<why>.*)");
    private static final Set<String> UNCLEAR = Set.of("-", "--", "---", "?", "??", "...", "…", "n/a", "na", "n.a.", "none",
            "nil", "null", "unknown", "lost", "not known", "not measured", "not recorded", "not given", "unmeasured",
            "absent", "no", "tbd", "~", "x", "uniface", "unreadable", "not legible", "inapplicable");

    private Absence() { }

    /** Empty where the text does not speak of an absence at all. */
    static Optional<Step<Reading>> read(Task task) {
        String plain = task.marks().plain();
        Matcher absent = ABSENT.matcher(plain);
        if (absent.matches()) {
            return Optional.of(absence(absent, task));
        }
        if (UNCLEAR.contains(plain.strip().toLowerCase(Locale.ROOT))) {
            return Optional.of(task.stop(ReadingFault.UNCLEAR_ABSENCE, task.marks().quoted()
                            + " does not say whether the " + task.kind().word() + " is missing, cannot be measured or cannot be read.",
                    "Write \"missing: why\" if it could have been measured, \"not applicable: why\" if the coin has none, or "
                            + "\"illegible: why\" if the record cannot be read, each within quotation marks like these."));
        }
        return Optional.empty();
    }

    private static Step<Reading> absence(Matcher absent, Task task) {
        String why = task.marks().written(absent.start("why"), absent.end("why")).strip();
        String word = absent.group(1).toLowerCase(Locale.ROOT).replaceAll(" +", " ");
        if (absent.group("colon") == null || why.codePoints().noneMatch(Character::isLetterOrDigit)) {
            return task.stop(ReadingFault.NO_REASON, "“" + word + "” stands without a reason.",
                    "Write a colon and the reason, all within quotation marks: \"" + word + ": " + example(word)
                            + "\". The methods statement counts the reasons.");
        }
        String recorded = task.marks().written();
        return Step.done(switch (word) {
            case "missing" -> new Reading.Missing(recorded, why);
            case "illegible" -> new Reading.Illegible(recorded, why);
            default -> new Reading.NotApplicable(recorded, why);
        });
    }

    private static String example(String word) {
        return switch (word) {
            case "missing" -> "not recorded by the excavator";
            case "illegible" -> "card water-stained";
            default -> "uniface";
        };
    }
}
