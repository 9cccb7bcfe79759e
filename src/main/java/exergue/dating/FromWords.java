package exergue.dating;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What authors write instead of EDTF, and what they mean by it: “c. 120–110 BC”, “ca. 120–110 v. Chr.” and “vers 120–110
 * av. J.-C.” are -0119~/-0109~. Parts of centuries, “between” and “before” are understood in English only.
 */
public final class FromWords {

    private static final int LONGEST = 80;

    /** Spellings of the eras, of “about” and of the stroke of a span, made one. */
    private static final List<String[]> SPELLINGS = List.of(
            new String[] {"[\\u00A0\\u202F\\u2009\\s]+", " "},
            new String[] {"\\b(?:v\\. ?chr\\.?|v\\. ?u\\. ?z\\.?|av\\. ?j\\.?-?c\\.?|av\\. ?n\\. ?è\\.?|a\\. ?e\\. ?v\\.?|a\\. ?c\\.)", "bc"},
            new String[] {"\\b(?:n\\. ?chr\\.?|u\\. ?z\\.?|apr?\\. ?j\\.?-?c\\.?|de n\\. ?è\\.?|e\\. ?v\\.?|d\\. ?c\\.)", "ad"},
            new String[] {"\\b(?:jahrhunderts?|jh\\.?|siècles?|secol[oi]|sec\\.)", "century"},
            new String[] {"^(?:von|de) (.+) (?:bis|à) (.+)$|^da (.+) a (.+)$", "from $1$3 to $2$4"},
            new String[] {"\\bb\\. ?c\\. ?e\\.?", "bc"}, new String[] {"\\bb\\. ?c\\.?(?![a-z])", "bc"}, new String[] {"\\bbce\\b", "bc"},
            new String[] {"\\ba\\. ?d\\.?(?![a-z])", "ad"}, new String[] {"\\bc\\. ?e\\.?(?![a-z])", "ad"}, new String[] {"\\bce\\b", "ad"},
            new String[] {"\\b(?:circa|about|around|approximately|approx\\.?|vers|env\\.|environ|um|etwa|verso|ca?\\.|ca?(?= [0-9])) ?", "~"},
            new String[] {"^between (.+) and (.+)$", "$1–$2"},
            new String[] {"\\bcenturies\\b|\\bcent\\.?(?= |$)", "century"});

    private static final Pattern DOUBT = Pattern.compile("^(?:probably|perhaps|possibly) | ?\\(?\\?\\)?$");
    private static final Pattern FROM_TO = Pattern.compile("from (.+?) to (.+)");
    private static final Pattern OPEN = Pattern.compile("(from|since|after|until|up to|before) (.+)");
    private static final Pattern BETWEEN = Pattern.compile(" ?[–—-] ?| to ");
    private static final Pattern SLASH = Pattern.compile("(~?)(ad )?([0-9]{1,4})/([0-9]{1,4})( bc| ad)?");

    private FromWords() { }

    /**
     * What is meant.
     *
     * @param sure false where something else may be meant too
     */
    public record Meant(String edtf, boolean sure) {

        Dating dating() {
            return ((Parsed.Accepted) DatingParser.parse(edtf)).dating();
        }
    }

    /** Empty where it cannot be told, as where BC or AD is not said of a year with less than four figures. */
    public static Optional<Meant> read(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        Optional<Meant> tidied = tidied(text);
        return tidied.isPresent() ? tidied : words(text).filter(meant -> DatingParser.isSound(meant.edtf()));
    }

    /** EDTF with spaces in it, or with a dash for the stroke; but “1111–1122?” is in words, where ? is said of both. */
    private static Optional<Meant> tidied(String text) {
        String close = text.replaceAll("\\s+", "").replaceAll("~\\?|\\?~", "%");
        for (String edtf : List.of(close, close.replaceFirst("[–—]", "/"), close.replaceFirst("(?<=[0-9X?~%])-(?=-?[0-9]{4}[?~%]?$)", "/"))) {
            if (!edtf.equals(text) && (edtf.equals(close) || !edtf.endsWith("?")) && DatingParser.isSound(edtf)) {
                return Optional.of(new Meant(edtf, true));
            }
        }
        return Optional.empty();
    }

    private static Optional<Meant> words(String text) {
        String words = text.strip().toLowerCase(Locale.ROOT);
        for (String[] spelling : SPELLINGS) {
            words = words.replaceAll(spelling[0], spelling[1]);
        }
        Matcher apart = FROM_TO.matcher(words);
        if (apart.matches()) {
            return span(Side.of(apart.group(1)), Side.of(apart.group(2)));
        }
        Matcher doubt = DOUBT.matcher(words);
        boolean uncertain = doubt.find();
        String said = uncertain ? doubt.replaceFirst("") : words;
        Optional<Meant> meant = open(said).or(() -> slashed(said)).or(() -> plain(said));
        return uncertain ? meant.map(FromWords::doubted) : meant;
    }

    private static Meant doubted(Meant meant) {
        String edtf = meant.edtf().replaceAll("(?<=[0-9X])(?=/|$)", "?").replace('~', '%');
        return new Meant(edtf, meant.sure());
    }

    private static Optional<Meant> open(String words) {
        Matcher open = OPEN.matcher(words);
        if (!open.matches()) {
            return Optional.empty();
        }
        String which = open.group(1);
        return Side.of(open.group(2)).flatMap(side -> side.years(Optional.empty()).map(years ->
                List.of("from", "since", "after").contains(which)
                        ? year(years.first()) + side.sign() + "/.." : "../" + year(years.last()) + side.sign()))
                .map(edtf -> new Meant(edtf, !List.of("after", "before").contains(which)));
    }

    /** “278/7 BC”: a year of another calendar, which falls in two of ours. */
    private static Optional<Meant> slashed(String words) {
        Matcher slash = SLASH.matcher(words);
        if (!slash.matches()) {
            return Optional.empty();
        }
        boolean before = " bc".equals(slash.group(5));
        int first = Integer.parseInt(slash.group(3));
        int last = completed(slash.group(3), slash.group(4));
        boolean said = slash.group(2) != null || slash.group(5) != null || first >= Side.BARE_FROM;
        if (!said || last - first != (before ? -1 : 1)) {
            return Optional.empty();
        }
        String from = year(before ? 1 - first : first) + slash.group(1);
        return Optional.of(new Meant(from + "/" + year(before ? 1 - last : last) + slash.group(1), true));
    }

    private static Optional<Meant> plain(String words) {
        String[] sides = BETWEEN.split(words, -1);
        if (sides.length == 1) {
            return Side.of(words).flatMap(side -> side.years(Optional.empty()).map(years -> new Meant(written(years, side, side), true)));
        }
        if (sides.length != 2) {
            return Optional.empty();
        }
        String sign = sides[0].startsWith("~") && !sides[1].startsWith("~") ? "~" : "";
        return span(Side.of(sides[0]), Side.of(sign + sides[1]));
    }

    private static Optional<Meant> span(Optional<Side> one, Optional<Side> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        Side from = one.get();
        Side to = other.get().completedAfter(from);
        Optional<Years> first = from.years(to.era().or(to::eraUnlessSaid));
        Optional<Years> last = to.years(from.era().or(from::eraUnlessSaid));
        if (first.isEmpty() || last.isEmpty() || first.get().first() > last.get().last()) {
            return Optional.empty();
        }
        return Optional.of(new Meant(written(new Years(first.get().first(), last.get().last()), from, to), !to.mayBeShortened(from)));
    }

    private static String written(Years years, Side from, Side to) {
        return years.first() == years.last() ? year(years.first()) + from.sign()
                : year(years.first()) + from.sign() + "/" + year(years.last()) + to.sign();
    }

    /** The second of two years, with the figures of the first that it leaves out. */
    static int completed(String first, String last) {
        return Integer.parseInt(last.length() < first.length() ? first.substring(0, first.length() - last.length()) + last : last);
    }

    /** A year as EDTF writes it; -9999 to 9999. */
    static String year(int year) {
        String digits = "000" + Math.abs(year);
        return (year < 0 ? "-" : "") + digits.substring(digits.length() - Math.max(4, digits.length() - 3));
    }
}
