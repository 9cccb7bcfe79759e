package exergue.edition.methods.french;

import exergue.edition.methods.Tally;
import exergue.measure.Kind;
import java.util.List;
import java.util.function.Function;

/** What is counted, with all that has to agree with it. */
enum Noun {

    COIN("monnaie", "monnaies", true), FIGURE("valeur", "valeurs", true), SOURCE("source", "sources", true),
    WEIGHT("poids", "poids", false), DIAMETER("diamètre", "diamètres", false), AXIS("axe", "axes", false),
    THICKNESS("épaisseur", "épaisseurs", true), DENSITY("densité", "densités", true),
    SURFACE("surface", "surfaces", true);

    private final String singular;
    private final String plural;
    private final boolean feminine;

    Noun(String singular, String plural, boolean feminine) {
        this.singular = singular;
        this.plural = plural;
        this.feminine = feminine;
    }

    static Noun of(Kind kind) {
        return valueOf(kind.name());
    }

    String plural() {
        return plural;
    }

    /** "une", "deux", "12" */
    String number(int n) {
        return n == 1 ? feminine ? "une" : "un" : Grammar.NUMBERS.of(n);
    }

    /** "brisée : trois", "percée : une" */
    <T> List<String> tallied(List<Tally.Count<T>> counts, Function<T, String> name) {
        return Grammar.NUMBERS.tallied(counts, name, Grammar.COLON, this::number);
    }

    /** "une monnaie", "12 monnaies" */
    String count(int n) {
        return number(n) + " " + (n == 1 ? singular : plural);
    }

    /** The same beside other counts; with figures where one of them needs figures. */
    String count(int n, boolean inWords) {
        return inWords ? count(n) : Grammar.NUMBERS.figures(n) + " " + (n == 1 ? singular : plural);
    }

    /** "le poids", "l’axe", "les axes" */
    String the(int n) {
        if (n > 1) {
            return "les " + plural;
        }
        return Grammar.isElided(singular) ? "l’" + singular : (feminine ? "la " : "le ") + singular;
    }

    /** "aucun poids", "aucune densité" */
    String none() {
        return (feminine ? "aucune " : "aucun ") + singular;
    }

    /** "de poids", "d’axe" */
    String of() {
        return Grammar.of(singular);
    }

    /** A participle that agrees: "imprimé", "imprimées". */
    String with(String participle, int n) {
        return participle + (feminine ? "e" : "") + (n > 1 ? "s" : "");
    }
}
