package exergue.study.weight;

import exergue.model.CoinGroup;
import exergue.model.StudyWord;
import exergue.model.Written;
import exergue.study.figure.Wording;

/** A theoretical weight as a number to reckon with. */
final class Standard {

    private Standard() { }

    /** Of one coin, in grams. */
    static double weight(CoinGroup.WeightStandard standard) {
        return standard.weight().value().doubleValue() / standard.pieces().value();
    }

    /** Its name, or the word for any. */
    static String name(CoinGroup.WeightStandard standard, Wording wording) {
        return standard.name().map(Written::value).orElse(wording.of(StudyWord.STANDARD));
    }
}
