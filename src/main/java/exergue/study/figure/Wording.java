package exergue.study.figure;

import exergue.measure.PrintForm;
import exergue.model.Language;
import exergue.model.StudyWord;
import exergue.model.Worded;
import exergue.study.Figure;
import exergue.study.statistic.Interval;
import java.util.Optional;

/** How figures and their words are printed. */
public record Wording(Language language, PrintForm form) {

    /** In place of what is undefined. */
    public static final String NONE = "–";

    private static final String MINUS = "\u2212";

    /** For the terminal and for files. */
    public static final Wording PLAIN = new Wording(Language.ENGLISH,
            new PrintForm(2, 0, PrintForm.DEFAULT.rounding(), ".", " ", "h"));

    public String of(Worded word) {
        return word.in(language);
    }

    /** The word's text with its places filled: {n} and what it stands for, by turns. */
    public String of(Worded word, String... places) {
        String text = of(word);
        for (int i = 0; i + 1 < places.length; i += 2) {
            text = text.replace("{" + places[i] + "}", places[i + 1]);
        }
        return text;
    }

    /** With so many decimals and a true minus sign. */
    public String number(double value, int decimals) {
        return Figure.words(value, decimals).replace(".", form.decimalMark());
    }

    public String number(Optional<Double> value, int decimals) {
        return value.map(one -> number(one, decimals)).orElse(NONE);
    }

    /** With a plus or a true minus; nought has neither. */
    public String signed(double value, int decimals) {
        String words = number(value, decimals);
        return words.startsWith(MINUS) || words.matches("[0.,]+") ? words : "+" + words;
    }

    /** "4.08–4.14" */
    public String interval(Optional<Interval> interval, int decimals) {
        return interval.map(one -> span(one.from(), one.to(), decimals)).orElse(NONE);
    }

    /** Two figures with a dash between them; with words where one of them is below nought. */
    public String span(double from, double to, int decimals) {
        String between = from < 0 || to < 0 ? "\u00A0" + of(StudyWord.TO) + "\u00A0" : "–";
        return number(from, decimals) + between + number(to, decimals);
    }

    /** A probability to three decimals, or that it is less than one in a thousand. */
    public String probability(double p) {
        return p < 0.001 ? "<\u00A0" + number(0.001, 3) : number(p, 3);
    }

    /** Figure and unit with the house's space between them. @param unit "g" */
    public String with(String figure, String unit) {
        return figure.equals(NONE) ? figure : figure + form.unitSpace() + unit;
    }
}
