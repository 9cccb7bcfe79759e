package exergue.study.weight;

import exergue.model.CoinGroup;

/** A theoretical weight as a number to reckon with. */
final class Standard {

    private Standard() { }

    /** Of one coin, in grams. */
    static double weight(CoinGroup.WeightStandard standard) {
        return standard.weight().value().doubleValue() / standard.pieces().value();
    }
}
