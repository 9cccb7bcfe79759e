package exergue.dating;

import exergue.dating.DateStyle.Centuries;
import exergue.dating.DateStyle.EraWords;
import java.util.List;
import java.util.stream.Stream;

/** How a language says dates. Usage of print in that language; common practice, no source. */
public enum DateLanguage {

    ENGLISH("en", "c.", "?", List.of("BC", "AD", "BCE", "CE"),
            new Frames("from %s to %s", "from %s", "until %s", "end unknown", "beginning unknown", "century", "%d %s"),
            List.of("January", "February", "March", "April", "May", "June", "July", "August", "September", "October",
                    "November", "December"),
            List.of("spring", "summer", "autumn", "winter"),
            List.of("first quarter of", "second quarter of", "third quarter of", "last quarter of", "first third of",
                    "second third of", "last third of", "first half of", "second half of")) {

        @Override
        String ordinal(int century, Centuries form) {
            return form == Centuries.FIGURES ? Ordinals.figure(century) : Ordinals.word(century);
        }

        @Override
        String after(String years, EraWords words) {
            return words == EraWords.BC_AD ? after(words) + " " + years : super.after(years, words);
        }
    },

    FRENCH("fr", "vers", "\u202F?", List.of("av. J.-C.", "apr. J.-C.", "av. n. è.", "de n. è."),
            new Frames("de %s à %s", "à partir de %s", "jusqu’à %s", "fin inconnue", "début inconnu", "siècle", "%d %s"),
            List.of("janvier", "février", "mars", "avril", "mai", "juin", "juillet", "août", "septembre", "octobre",
                    "novembre", "décembre"),
            List.of("printemps", "été", "automne", "hiver"),
            List.of("premier trimestre de", "deuxième trimestre de", "troisième trimestre de", "dernier trimestre de",
                    "premier tiers de", "deuxième tiers de", "dernier tiers de", "première moitié de", "seconde moitié de")) {

        @Override
        String ordinal(int century, Centuries form) {
            return Ordinals.roman(century) + (century == 1 ? "er" : "e");
        }

        @Override
        String dayOf(int day, String month) {
            return (day == 1 ? "1er" : "" + day) + " " + month;
        }
    },

    GERMAN("de", "ca.", "?", List.of("v. Chr.", "n. Chr.", "v. u. Z.", "u. Z."),
            new Frames("von %s bis %s", "ab %s", "bis %s", "Ende unbekannt", "Beginn unbekannt", "Jahrhundert", "%d. %s"),
            List.of("Januar", "Februar", "März", "April", "Mai", "Juni", "Juli", "August", "September", "Oktober",
                    "November", "Dezember"),
            List.of("Frühjahr", "Sommer", "Herbst", "Winter"),
            List.of("erstes Viertel", "zweites Viertel", "drittes Viertel", "letztes Viertel", "erstes Drittel",
                    "zweites Drittel", "letztes Drittel", "erste Hälfte", "zweite Hälfte")) {

        @Override
        String ordinal(int century, Centuries form) {
            return century + ".";
        }
    },

    ITALIAN("it", "ca.", "?", List.of("a.C.", "d.C.", "a.e.v.", "e.v."),
            new Frames("da %s a %s", "da %s", "fino a %s", "fine sconosciuta", "inizio sconosciuto", "secolo", "%d %s"),
            List.of("gennaio", "febbraio", "marzo", "aprile", "maggio", "giugno", "luglio", "agosto", "settembre", "ottobre",
                    "novembre", "dicembre"),
            List.of("primavera", "estate", "autunno", "inverno"),
            List.of("primo trimestre", "secondo trimestre", "terzo trimestre", "ultimo trimestre", "primo terzo",
                    "secondo terzo", "ultimo terzo", "prima metà", "seconda metà")) {

        @Override
        String ordinal(int century, Centuries form) {
            return Ordinals.roman(century);
        }

        @Override
        String dayOf(int day, String month) {
            return (day == 1 ? "1º" : "" + day) + " " + month;
        }
    };

    private static final int FIRST_GROUPING = 21;
    private static final int FIRST_QUARTER = 33;

    private final String code;
    private final String circa;
    private final String uncertain;
    private final List<String> eras;
    private final Frames frames;
    private final List<String> months;
    private final List<String> seasons;
    private final List<String> parts;

    /** @param eras before and after Christ, before and in the common era */
    DateLanguage(String code, String circa, String uncertain, List<String> eras, Frames frames, List<String> months,
                 List<String> seasons, List<String> parts) {
        this.code = code;
        this.circa = circa;
        this.uncertain = uncertain;
        this.eras = eras;
        this.frames = frames;
        this.months = months;
        this.seasons = seasons;
        this.parts = parts;
    }

    /** Sentences that dates are put into; {@code %s} stands for a date, in {@code day} for the day and its month. */
    private record Frames(String fromTo, String from, String until, String endUnknown, String beginningUnknown,
                          String century, String day) { }

    /** @param code as in BCP 47: "de"; English for any that is not known here */
    public static DateLanguage of(String code) {
        return Stream.of(values()).filter(language -> language.code.equals(code)).findFirst().orElse(ENGLISH);
    }

    public String circa() {
        return circa;
    }

    public String uncertain() {
        return uncertain;
    }

    String before(EraWords words) {
        return eras.get(words == EraWords.BC_AD ? 0 : 2);
    }

    String after(EraWords words) {
        return eras.get(words == EraWords.BC_AD ? 1 : 3);
    }

    /** "AD 5", "5 CE", "5 n. Chr." */
    String after(String years, EraWords words) {
        return years + " " + after(words);
    }

    /** Which century, in words where the language prints them so. */
    abstract String ordinal(int century, Centuries form);

    String century() {
        return frames.century();
    }

    String fromTo(String from, String to) {
        return frames.fromTo().replaceFirst("%s", from).replaceFirst("%s", to);
    }

    String from(String date, boolean endKnown) {
        return frames.from().replace("%s", date) + (endKnown ? "" : ", " + frames.endUnknown());
    }

    String until(String date, boolean beginningKnown) {
        return frames.until().replace("%s", date) + (beginningKnown ? "" : ", " + frames.beginningUnknown());
    }

    /** @param number of the month, or of one of EDTF's groupings of months: seasons, quarters, thirds, halves */
    String month(int number) {
        if (number < FIRST_GROUPING) {
            return months.get(number - 1);
        }
        return number < FIRST_QUARTER ? seasons.get((number - FIRST_GROUPING) % seasons.size()) : parts.get(number - FIRST_QUARTER);
    }

    String dayOf(int day, String month) {
        return frames.day().replace("%d", "" + day).replace("%s", month);
    }
}
