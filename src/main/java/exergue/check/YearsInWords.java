package exergue.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Years of our time that stand in figures among words: "sale of 1897, lot 1502" has 1897. */
public final class YearsInWords {

    /** From the first printed books on; a number of four figures that is counted, not dated, has its word before it. */
    private static final Pattern YEAR = Pattern.compile("(?<![\\p{L}\\p{N}./,–-])(1[4-9][0-9]{2}|20[0-9]{2})(?:\\s?[–/-]\\s?([0-9]{4}|[0-9]{1,2}))?"
            + "(?![\\p{L}\\p{N}])");
    private static final Pattern COUNTED = Pattern.compile("(?iu)(?<!\\p{L})(lots?|nos?|nr|n[°º]|inv|pl|pls|pp?|cat|acc|number|numéro|nummer"
            + "|numero|lotti|lotto|los|taf|tav)[.:]?\\s*$");
    private static final Pattern NOT_EXACT = Pattern.compile("(?iu)(?<!\\p{L})(before|by|after|until|till|since|from|about|around|circa|c\\.|ca\\.?"
            + "|vor|nach|bis|seit|ab|um|vers|avant|après|depuis|jusqu’en|verso|prima del|dopo il|fino al|dal|entro il)\\s*$");

    private YearsInWords() { }

    /** Those that are meant as they stand, in the order of the words; both ends of a span. Not "before 1880". */
    public static List<Integer> exact(String words) {
        List<Integer> years = new ArrayList<>();
        Matcher matcher = YEAR.matcher(words);
        while (matcher.find()) {
            String before = words.substring(0, matcher.start());
            if (!COUNTED.matcher(before).find() && !NOT_EXACT.matcher(before).find()) {
                years.add(Integer.valueOf(matcher.group(1)));
                if (matcher.group(2) != null) {
                    years.add(end(matcher.group(1), matcher.group(2)));
                }
            }
        }
        return years;
    }

    /** The last of them. */
    public static OptionalInt last(String words) {
        List<Integer> years = exact(words);
        return years.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Collections.max(years));
    }

    /** 1868–71 ends in 1871. */
    private static int end(String from, String to) {
        return Integer.parseInt(from.substring(0, from.length() - to.length()) + to);
    }
}
