package exergue.dating;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One end of a span as words give it: a year, a decade, a century or part of one.
 *
 * @param figure  of the year, or which century
 * @param written the figure as written, for shortened ends
 * @param unit    how long it is
 * @param part    of the century, from 0; -1 for all of it
 * @param era     bc or ad, if said
 * @param sign    EDTF's sign for what is said of it: ~, ?, % or nothing
 */
record Side(int figure, String written, Unit unit, int part, Optional<String> era, String sign) {

    enum Unit { YEAR, DECADE, CENTURY, HALF, QUARTER }

    /** Years with four figures need no AD. */
    static final int BARE_FROM = 1000;

    private static final Pattern YEAR = Pattern.compile("(~?)(?:(ad|bc) ?)?([0-9]{1,4})(s?)(?: ?(ad|bc))?( ?\\(?\\??\\)?)");
    private static final Pattern CENTURY = Pattern.compile(
            "(~?)(?:(?:the )?(first|second|third|fourth|last|1st|2nd|3rd|4th) (half|quarter) of )?(?:the )?"
                    + "([a-z-]+|[0-9]{1,2}(?:st|nd|rd|th|\\.))(?:[ -]century)?(?: (ad|bc))?( ?\\(?\\??\\)?)");

    static Optional<Side> of(String words) {
        Matcher year = YEAR.matcher(words);
        if (year.matches()) {
            int figure = Integer.parseInt(year.group(3));
            boolean decade = !year.group(4).isEmpty();
            if (figure == 0 || decade && figure % 10 != 0) {
                return Optional.empty();
            }
            return Optional.of(new Side(figure, year.group(3), decade ? Unit.DECADE : Unit.YEAR, -1,
                    Optional.ofNullable(year.group(2)).or(() -> Optional.ofNullable(year.group(5))),
                    sign(year.group(1), year.group(6))));
        }
        Matcher century = CENTURY.matcher(words);
        return century.matches() ? Ordinals.number(century.group(4)).flatMap(number -> ofCentury(number, century)) : Optional.empty();
    }

    private static Optional<Side> ofCentury(int number, Matcher words) {
        Unit unit = words.group(3) == null ? Unit.CENTURY : words.group(3).equals("half") ? Unit.HALF : Unit.QUARTER;
        int parts = unit == Unit.HALF ? 2 : 4;
        int part = -1;
        if (unit != Unit.CENTURY) {
            part = words.group(2).equals("last") ? parts - 1 : Ordinals.number(words.group(2)).orElseThrow() - 1;
        }
        return part >= parts ? Optional.empty() : Optional.of(new Side(number, "", unit, part,
                Optional.ofNullable(words.group(5)), sign(words.group(1), words.group(6))));
    }

    private static String sign(String about, String doubt) {
        return Qualification.of(!doubt.isBlank(), !about.isEmpty()).sign();
    }

    /** AD where nothing is said and the figure alone says it. */
    Optional<String> eraUnlessSaid() {
        boolean late = unit == Unit.YEAR || unit == Unit.DECADE ? figure >= BARE_FROM : figure > BARE_FROM / 100;
        return late ? Optional.of("ad") : Optional.empty();
    }

    /** @param others the era of the other end, which counts where this one says nothing */
    Optional<Years> years(Optional<String> others) {
        return era.or(() -> others).or(this::eraUnlessSaid).map(said -> said.equals("bc") ? before() : after());
    }

    private Years before() {
        return switch (unit) {
            case YEAR -> new Years(1 - figure, 1 - figure);
            case DECADE -> new Years(1 - figure - 9, 1 - figure);
            default -> partOf(1 - 100 * figure);
        };
    }

    private Years after() {
        return switch (unit) {
            case YEAR -> new Years(figure, figure);
            case DECADE -> new Years(figure, figure + 9);
            default -> partOf(100 * (figure - 1) + 1);
        };
    }

    private Years partOf(int firstOfCentury) {
        int length = switch (unit) {
            case HALF -> 50;
            case QUARTER -> 25;
            default -> 100;
        };
        int first = firstOfCentury + Math.max(part, 0) * length;
        return new Years(first, first + length - 1);
    }

    /** “AD 117–38” is 117–138: years AD go up. */
    Side completedAfter(Side first) {
        boolean goesUp = unit == Unit.YEAR && first.unit == Unit.YEAR && figure < first.figure
                && !era.or(first::era).equals(Optional.of("bc")) && !first.era.equals(Optional.of("bc"));
        return goesUp ? new Side(FromWords.completed(first.written, written), written, unit, part, era, sign) : this;
    }

    /** “120–10 BC” may be 110 BC. */
    boolean mayBeShortened(Side first) {
        return unit == Unit.YEAR && first.unit == Unit.YEAR && era.equals(Optional.of("bc"))
                && first.era.isEmpty() && written.length() < first.written.length()
                && FromWords.completed(first.written, written) < first.figure;
    }
}
