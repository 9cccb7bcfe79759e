package exergue.dating;

import exergue.dating.Dating.End;
import exergue.dating.Dating.End.Without;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * EDTF to a dating. Forms and names as in the Extended Date/Time Format specification of the Library of Congress, 2019,
 * which became part of ISO 8601-2:2019.
 */
public final class DatingParser {

    /** What the editor's schema can test without understanding it. */
    public static final String FORM = "(?:" + DateText.FORM + "|(?:\\.\\.|" + DateText.FORM + ")?/(?:\\.\\.|" + DateText.FORM + ")?)";

    private static final int LONGEST = 80;
    private static final Pattern SHORT_YEAR = Pattern.compile("[?~%]?(-?)([0-9]{1,3}|[0-9]{5,8})[?~%]?");
    private static final Pattern TIME = Pattern.compile(".*[0-9]T[0-9].*");
    private static final Pattern SET = Pattern.compile("[\\[{].*");
    private static final Pattern EXPONENT_OR_SIGNIFICANT = Pattern.compile("Y?-?[0-9]+(E[0-9]+)?(S[0-9]+)?");

    private static final String HOW = "Write four digits for each year: 0117 for AD 117, -0119 for 120 BC (the year 0000 is 1 BC), "
            + "-0119/-0109 for 120–110 BC, and ~ after a year for “about”.";

    private DatingParser() { }

    /** Never throws, whatever the text. */
    public static Parsed parse(String text) {
        int length = text.codePointCount(0, text.length());
        if (length > LONGEST) {
            return new Parsed.Refused(DatingFault.NOT_EDTF, 0, length, "This is too long for a date.",
                    HOW + " What else there is to say belongs in the note.", Optional.empty());
        }
        return notTaken(text, length).orElseGet(() -> dated(text, length));
    }

    /** Whether it is EDTF that is accepted, without a look at what else may be meant. */
    static boolean isSound(String text) {
        int stroke = text.indexOf('/');
        if (stroke < 0) {
            return DateText.of(text).filter(date -> date.misfit().isEmpty()).isPresent();
        }
        String from = text.substring(0, stroke);
        String to = text.substring(stroke + 1);
        return isEnd(from) && isEnd(to) && span(text, from, to) instanceof Parsed.Accepted;
    }

    private static Optional<Parsed> notTaken(String text, int length) {
        String kind;
        if (SET.matcher(text).matches()) {
            kind = "a set of dates";
        } else if (TIME.matcher(text).matches()) {
            kind = "a time of day";
        } else if ((text.indexOf('E') >= 0 || text.indexOf('S') >= 0) && EXPONENT_OR_SIGNIFICANT.matcher(text).matches()) {
            kind = "a year with an exponent or with significant digits";
        } else {
            return Optional.empty();
        }
        return Optional.of(new Parsed.Refused(DatingFault.NOT_TAKEN, 0, length,
                "“" + text + "” is " + kind + ", which no catalogue prints of a coin.",
                "Write one date, or a span with a stroke between its ends: -0119/-0109 is 120–110 BC.", Optional.empty()));
    }

    private static Parsed dated(String text, int length) {
        int stroke = text.indexOf('/');
        if (stroke < 0) {
            Optional<DateText> date = DateText.of(text);
            return date.isEmpty() ? notEdtf(text, length) : date.get().misfit().map(misfit -> refused(misfit, 0))
                    .orElseGet(() -> new Parsed.Accepted(new Dating.Once(text, date.get().date())));
        }
        String from = text.substring(0, stroke);
        String to = text.substring(stroke + 1);
        if (!isEnd(from) || !isEnd(to)) {
            return notEdtf(text, length);
        }
        return span(text, from, to);
    }

    private static boolean isEnd(String text) {
        return text.isEmpty() || text.equals("..") || DateText.of(text).isPresent();
    }

    private static Parsed span(String text, String from, String to) {
        Optional<DateText> first = DateText.of(from);
        Optional<DateText> last = DateText.of(to);
        if (first.isEmpty() && last.isEmpty()) {
            return new Parsed.Refused(DatingFault.SAYS_NOTHING, 0, text.length(), "“" + text + "” has no year at either end.",
                    "Leave the date out, or write one end: ../-0109 is “until 110 BC”.", Optional.empty());
        }
        Optional<Parsed> misfit = first.flatMap(DateText::misfit).map(found -> refused(found, 0))
                .or(() -> last.flatMap(DateText::misfit).map(found -> refused(found, from.length() + 1)));
        if (misfit.isPresent()) {
            return misfit.get();
        }
        Dating.Span span = new Dating.Span(text, end(from, first), end(to, last));
        return isBackwards(span) ? backwards(text, from, to) : new Parsed.Accepted(span);
    }

    private static Parsed backwards(String text, String from, String to) {
        String turned = to + "/" + from;
        boolean before = text.startsWith("-");
        return new Parsed.Refused(DatingFault.BACKWARDS, 0, text.length(),
                "“" + text + "” ends before it begins" + (before ? ": a year BC further from zero is the earlier one." : "."),
                "Write " + turned + ".", Optional.of(turned));
    }

    private static End end(String text, Optional<DateText> date) {
        return date.<End>map(found -> new End.At(found.date())).orElse(text.isEmpty() ? Without.UNKNOWN : Without.OPEN);
    }

    private static boolean isBackwards(Dating.Span span) {
        if (!(span.from() instanceof End.At from) || !(span.to() instanceof End.At to)) {
            return false;
        }
        Years first = from.date().years();
        Years last = to.date().years();
        boolean sameYear = first.first() == first.last() && first.equals(last);
        return first.first() > last.last()
                || sameYear && (isBefore(to.date().month(), from.date().month())
                        || from.date().month().equals(to.date().month()) && isBefore(to.date().day(), from.date().day()));
    }

    /** Seasons are not compared with months. */
    private static boolean isBefore(OptionalInt one, OptionalInt other) {
        return one.isPresent() && other.isPresent() && one.getAsInt() > 20 == other.getAsInt() > 20
                && one.getAsInt() < other.getAsInt();
    }

    private static Parsed refused(DateText.Misfit misfit, int offset) {
        return new Parsed.Refused(misfit.fault(), offset + misfit.offset(), misfit.length(), misfit.what(), misfit.remedy(),
                Optional.empty());
    }

    private static Parsed notEdtf(String text, int length) {
        Optional<FromWords.Meant> meant = FromWords.read(text);
        return meant.map(found -> meant(text, length, found))
                .or(() -> yearDigits(text))
                .orElseGet(() -> new Parsed.Refused(DatingFault.NOT_EDTF, 0, length, isNot(text), withoutEra(text).orElse(HOW),
                        Optional.empty()));
    }

    private static String isNot(String text) {
        return "“" + text + "” is not a date in EDTF.";
    }

    private static Parsed meant(String text, int length, FromWords.Meant meant) {
        String remedy = meant.sure() ? "Write " + meant.edtf() + "." : "Did you mean " + meant.edtf() + ", which is "
                + DatePrinter.print(meant.dating(), DateStyle.DEFAULT) + "?";
        return new Parsed.Refused(DatingFault.NOT_EDTF, 0, length, isNot(text), remedy,
                meant.sure() ? Optional.of(meant.edtf()) : Optional.empty());
    }

    private static Optional<Parsed> yearDigits(String text) {
        int offset = 0;
        for (String side : text.split("/", 2)) {
            Matcher year = SHORT_YEAR.matcher(side);
            if (year.matches()) {
                return Optional.of(yearDigits(side, year, offset));
            }
            offset += side.codePointCount(0, side.length()) + 1;
        }
        return Optional.empty();
    }

    /** “c. 120–110” and no word of BC or AD. */
    private static Optional<String> withoutEra(String text) {
        Optional<String> before = FromWords.read(text + " BC").map(FromWords.Meant::edtf);
        Optional<String> after = FromWords.read(text + " AD").map(FromWords.Meant::edtf);
        Optional<String> ifBefore = before.map(edtf -> "Write " + edtf + " if that is BC");
        Optional<String> ifAfter = after.map(edtf -> "write " + edtf + " if it is AD");
        if (ifBefore.isPresent()) {
            return Optional.of(ifBefore.get() + ifAfter.map(more -> ", or " + more).orElse("") + ".");
        }
        return after.map(edtf -> "Write " + edtf + " if that is AD.");
    }

    private static Parsed yearDigits(String side, Matcher year, int offset) {
        int number = Integer.parseInt(year.group(2));
        String what = "“" + side + "” does not have the four digits of a year.";
        String remedy;
        if (number > 9999) {
            remedy = "No coin is of that year; write four digits.";
        } else if (number == 0) {
            remedy = "Write 0000 for 1 BC, 0001 for AD 1; there was no year nought.";
        } else if (year.group(1).isEmpty()) {
            remedy = "Write " + FromWords.year(number) + " for AD " + number + ", or " + FromWords.year(1 - number) + " for " + number + " BC.";
        } else {
            remedy = "Write " + FromWords.year(1 - number) + " for " + number + " BC: the year 0000 is 1 BC, so the figure is one less.";
        }
        return new Parsed.Refused(DatingFault.YEAR_DIGITS, offset, side.length(), what, remedy, Optional.empty());
    }
}
