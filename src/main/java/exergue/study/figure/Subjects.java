package exergue.study.figure;

import exergue.finding.NearMiss;
import exergue.study.axis.AxisSubject;
import exergue.study.diameter.DiameterSubject;
import exergue.study.density.FinenessSubject;
import exergue.study.die.show.DieSubject;
import exergue.study.weight.WeightSubject;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Everything that can be shown of groups of coins. */
public final class Subjects {

    private static final List<Subject> METROLOGY = List.of(new WeightSubject(), new AxisSubject(), new DiameterSubject());
    private static final List<Subject> ALL = Stream.concat(METROLOGY.stream(), Stream.of(new DieSubject(), new FinenessSubject())).toList();

    private Subjects() { }

    public static List<Subject> all() {
        return ALL;
    }

    /** Those of what is measured. */
    public static List<Subject> metrology() {
        return METROLOGY;
    }

    public static List<String> words() {
        return ALL.stream().map(Subject::word).toList();
    }

    public static Optional<Subject> named(String word) {
        return ALL.stream().filter(subject -> subject.word().equals(word)).findFirst();
    }

    /** The subject that has a figure of that name for running text. */
    public static Optional<Subject> withFigure(String name) {
        return ALL.stream().filter(subject -> subject.figures().contains(name)).findFirst();
    }

    /** Names of all figures for running text. */
    public static List<String> figures() {
        return ALL.stream().flatMap(subject -> subject.figures().stream()).toList();
    }

    /** What may have been meant by a name that is not known. */
    public static Optional<String> nearFigure(String name) {
        return NearMiss.of(name, figures());
    }
}
