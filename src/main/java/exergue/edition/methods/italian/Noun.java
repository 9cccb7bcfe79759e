package exergue.edition.methods.italian;

import exergue.edition.methods.Tally;
import exergue.measure.Kind;
import java.util.List;
import java.util.function.Function;

/** What is counted, with its articles and all that has to agree with it. */
enum Noun {

    COIN("moneta", "monete", "la ", "le ", "una"), FIGURE("valore", "valori", "il ", "i ", "un"),
    SOURCE("fonte", "fonti", "la ", "le ", "una"), WEIGHT("peso", "pesi", "il ", "i ", "un"),
    DIAMETER("diametro", "diametri", "il ", "i ", "un"), AXIS("asse", "assi", "l’", "gli ", "un"),
    THICKNESS("spessore", "spessori", "lo ", "gli ", "uno"), DENSITY("densità", "densità", "la ", "le ", "una"),
    SURFACE("superficie", "superfici", "la ", "le ", "una");

    private final String singular;
    private final String plural;
    private final String article;
    private final String articles;
    private final String one;

    Noun(String singular, String plural, String article, String articles, String one) {
        this.singular = singular;
        this.plural = plural;
        this.article = article;
        this.articles = articles;
        this.one = one;
    }

    static Noun of(Kind kind) {
        return valueOf(kind.name());
    }

    /** "una", "due", "12" */
    String number(int n) {
        return n == 1 ? one : Grammar.NUMBERS.of(n);
    }

    /** "spezzata: tre", "forata: una" */
    <T> List<String> tallied(List<Tally.Count<T>> counts, Function<T, String> name) {
        return Grammar.NUMBERS.tallied(counts, name, ": ", this::number);
    }

    /** "una moneta", "uno spessore", "12 pesi" */
    String count(int n) {
        return number(n) + " " + (n == 1 ? singular : plural);
    }

    /** The same beside other counts; with figures where one of them needs figures. */
    String count(int n, boolean inWords) {
        return inWords ? count(n) : Grammar.NUMBERS.figures(n) + " " + (n == 1 ? singular : plural);
    }

    /** "il peso", "l’asse", "gli spessori" */
    String the(int n) {
        return n == 1 ? article + singular : articles + plural;
    }

    /** "nessun peso", "nessuno spessore", "nessuna densità" */
    String none() {
        return "ness" + one + " " + singular;
    }

    String singular() {
        return singular;
    }

    /** A participle without its ending, made to agree: "stampat" gives "stampato", "stampate". */
    String with(String stem, int n) {
        boolean feminine = one.equals("una");
        return stem + (n == 1 ? feminine ? "a" : "o" : feminine ? "e" : "i");
    }
}
