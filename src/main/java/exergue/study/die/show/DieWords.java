package exergue.study.die.show;

import exergue.model.DieWord;
import exergue.study.die.Die;
import exergue.study.die.DieSide;
import exergue.study.figure.Wording;
import exergue.study.statistic.Interval;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How dies and their figures are printed.
 *
 * @param several true where names of dies count in more than one mint or type, which must then be said with them
 */
record DieWords(Wording wording, boolean several) {

    static DieWords of(Wording wording, Collection<Die> dies) {
        return new DieWords(wording, dies.stream().map(Die::within).distinct().count() > 1);
    }

    String of(DieWord word) {
        return word.in(wording.language());
    }

    /** The word's text with its places filled: {n} and what it stands for, by turns. */
    String of(DieWord word, String... places) {
        String text = of(word);
        for (int i = 0; i + 1 < places.length; i += 2) {
            text = text.replace("{" + places[i] + "}", places[i + 1]);
        }
        return text;
    }

    String side(DieSide side) {
        return of(side == DieSide.OBVERSE ? DieWord.OBVERSE_DIES : DieWord.REVERSE_DIES);
    }

    String name(Die die) {
        return several ? die.name() + "\u00A0" + die.within() : die.name();
    }

    String names(List<Die> dies) {
        return String.join(", ", dies.stream().map(this::name).toList());
    }

    /** Estimates of dies are never finer than whole dies. */
    String dies(OptionalDouble dies) {
        return dies.isPresent() ? wording.number(dies.getAsDouble(), 0) : Wording.NONE;
    }

    /** "101 (78–152)", without brackets where there is no interval. */
    String dies(OptionalDouble dies, Optional<Interval> interval) {
        return dies(dies) + interval.map(span -> " (" + wording.span(span.from(), span.to(), 0) + ")").orElse("");
    }

    String ratio(OptionalDouble ratio) {
        return ratio.isPresent() ? wording.number(ratio.getAsDouble(), 2) : Wording.NONE;
    }

    /** Of a share. */
    String percent(double share) {
        return wording.with(wording.number(100 * share, 0), "%");
    }

    String percent(Interval shares) {
        return wording.with(wording.span(100 * shares.from(), 100 * shares.to(), 0), "%");
    }
}
