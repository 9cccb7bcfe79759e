package exergue.dating;

import exergue.dating.DateStyle.Centuries;
import exergue.dating.DateStyle.Ends;
import java.util.function.BiFunction;

/**
 * Years and spans of years in words. There is no year 0: EDTF's 0 is 1 BC.
 *
 * @param bare whether years AD may stand without their word
 */
record YearPrinter(DateStyle style, boolean bare) {

    String years(Years years) {
        if (years.first() == years.last()) {
            return isBefore(years.first()) ? before("" + number(years.first())) : after("" + years.first());
        }
        return isCenturies(years) && style.centuries() != Centuries.YEARS ? centuries(years) : span(years, "–", this::end);
    }

    /** Two years that one year of an era falls in: "278/7 BC". */
    String straddled(Years years) {
        return years.first() == years.last() ? years(years) : span(years, "/", YearPrinter::fewest);
    }

    private String span(Years years, String between, BiFunction<Integer, Integer, String> figure) {
        if (isBefore(years.first()) != isBefore(years.last())) {
            return before("" + number(years.first())) + between + language().after("" + years.last(), style.eraWords());
        }
        int first = number(years.first());
        int last = number(years.last());
        String figures = first + between + figure.apply(first, last);
        return isBefore(years.first()) ? before(figures) : after(figures);
    }

    private String before(String figures) {
        return figures + " " + language().before(style.eraWords());
    }

    private String after(String figures) {
        return bare ? figures : language().after(figures, style.eraWords());
    }

    /** The last year of a span, years BC always in full. */
    private String end(int first, int last) {
        return style.ends() == Ends.SHORT && last > first ? elided(first, last) : "" + last;
    }

    /** As few figures as tell the years apart; between 10 and 19 two of them, as one says them. */
    private static String elided(int first, int last) {
        String few = fewest(first, last);
        int tens = last % 100;
        return few.length() == 1 && tens >= 10 && tens < 20 && last > 99 ? "" + tens : few;
    }

    private static String fewest(int first, int last) {
        String one = "" + first;
        String other = "" + last;
        int same = 0;
        while (one.length() == other.length() && same < other.length() - 1 && one.charAt(same) == other.charAt(same)) {
            same++;
        }
        return other.substring(same);
    }

    private String centuries(Years years) {
        int first = century(years.first());
        int last = century(years.last());
        String century = " " + language().century();
        if (isBefore(years.first()) != isBefore(years.last())) {
            return ordinal(first) + century + " " + language().before(style.eraWords()) + "–" + ordinal(last) + century + " "
                    + language().after(style.eraWords());
        }
        String words = (first == last ? "" : ordinal(first) + "–") + ordinal(last) + century;
        if (isBefore(years.first())) {
            return before(words);
        }
        return bare ? words : words + " " + language().after(style.eraWords());
    }

    private String ordinal(int century) {
        return language().ordinal(century, style.centuries());
    }

    private DateLanguage language() {
        return style.language();
    }

    private static boolean isCenturies(Years years) {
        int first = number(years.first());
        int last = number(years.last());
        return (isBefore(years.first()) ? first % 100 == 0 : first % 100 == 1)
                && (isBefore(years.last()) ? last % 100 == 1 : last % 100 == 0);
    }

    private static int century(int year) {
        return (number(year) - 1) / 100 + 1;
    }

    private static boolean isBefore(int year) {
        return year < 1;
    }

    /** As people count: 1 BC, AD 1. */
    private static int number(int year) {
        return isBefore(year) ? 1 - year : year;
    }
}
