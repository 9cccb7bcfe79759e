package exergue.edition.methods.german;

import exergue.edition.methods.Tally;
import exergue.measure.Kind;
import java.util.List;
import java.util.function.Function;

/** What is counted, in the cases that the statement needs. */
enum Noun {

    COIN("Münze", "Münzen", "Münzen", Gender.FEMININE), FIGURE("Wert", "Werte", "Werten", Gender.MASCULINE),
    SOURCE("Quelle", "Quellen", "Quellen", Gender.FEMININE), WEIGHT("Gewicht", "Gewichte", "Gewichten", Gender.NEUTER),
    DIAMETER("Durchmesser", "Durchmesser", "Durchmessern", Gender.MASCULINE),
    AXIS("Stempelstellung", "Stempelstellungen", "Stempelstellungen", Gender.FEMININE),
    THICKNESS("Dicke", "Dicken", "Dicken", Gender.FEMININE), DENSITY("Dichte", "Dichten", "Dichten", Gender.FEMININE),
    SURFACE("Oberfläche", "Oberflächen", "Oberflächen", Gender.FEMININE);

    /** @param the nominative article; @param one indefinite, nominative; @param anOne accusative; @param ofOne dative */
    private enum Gender {
        MASCULINE("der", "ein", "einen", "einem"), FEMININE("die", "eine", "eine", "einer"),
        NEUTER("das", "ein", "ein", "einem");

        private final String the;
        private final String one;
        private final String accusative;
        private final String dative;

        Gender(String the, String one, String accusative, String dative) {
            this.the = the;
            this.one = one;
            this.accusative = accusative;
            this.dative = dative;
        }
    }

    private final String singular;
    private final String plural;
    private final String dativePlural;
    private final Gender gender;

    Noun(String singular, String plural, String dativePlural, Gender gender) {
        this.singular = singular;
        this.plural = plural;
        this.dativePlural = dativePlural;
        this.gender = gender;
    }

    static Noun of(Kind kind) {
        return valueOf(kind.name());
    }

    String plural() {
        return plural;
    }

    /** "eine", "zwei", "13" */
    String number(int n) {
        return n == 1 ? gender.one : Grammar.NUMBERS.of(n);
    }

    /** "gebrochen: drei", "gelocht: eine" */
    <T> List<String> tallied(List<Tally.Count<T>> counts, Function<T, String> name) {
        return Grammar.NUMBERS.tallied(counts, name, ": ", this::number);
    }

    /** Nominative: "eine Münze", "ein Durchmesser", "zwei Gewichte". */
    String count(int n) {
        return number(n) + " " + (n == 1 ? singular : plural);
    }

    /** The same beside other counts; with figures where one of them needs figures. */
    String count(int n, boolean inWords) {
        return inWords ? count(n) : Grammar.NUMBERS.figures(n) + " " + (n == 1 ? singular : plural);
    }

    /** Accusative, as after "für". */
    String accusative(int n) {
        return n == 1 ? gender.accusative + " " + singular : count(n);
    }

    /** Dative, as after "von". */
    String dative(int n) {
        return n == 1 ? gender.dative + " " + singular : Grammar.NUMBERS.of(n) + " " + dativePlural;
    }

    /** "das Gewicht", "die Gewichte" */
    String the(int n) {
        return n == 1 ? gender.the + " " + singular : "die " + plural;
    }

    /** Whose: "einer Münze", "von zwei Münzen"; of feminine nouns only. */
    String whose(int n) {
        return n == 1 ? dative(1) : "von " + dative(n);
    }

    /** Nominative: "kein Gewicht", "keine Dicke". */
    String none() {
        return "k" + gender.one + " " + singular;
    }

    /** Accusative: "keinen Durchmesser". */
    String noneAccusative() {
        return "k" + gender.accusative + " " + singular;
    }

    /** "das für eine Münze gedruckte Gewicht", "die für zwei Münzen gedruckten Gewichte" */
    String the(String attribute, int n) {
        return n == 1 ? gender.the + " " + attribute + "e " + singular : "die " + attribute + "en " + plural;
    }
}
