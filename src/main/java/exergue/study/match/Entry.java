package exergue.study.match;

import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Coin;
import exergue.model.Measurement;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import exergue.model.Written;
import exergue.study.Figure;
import java.util.Optional;
import java.util.stream.Stream;

/** A coin of the catalogue that a fresh one may be. */
record Entry(Coin coin, Type type, ReadingChoice choice) {

    /** @param figure in g, mm or hours; @param hand under whose convention */
    record Recorded(double figure, Convention hand, boolean vague) { }

    String id() {
        return coin.id().value();
    }

    /** Under the same convention as the fresh one, if there is such a figure; else the one that is printed. */
    Optional<Recorded> figure(Kind kind, Convention fresh) {
        return Stream.concat(coin.measured().stream(), coin.alsoMeasured().stream())
                .filter(block -> block.by().value().equals(fresh.id())).flatMap(block -> recorded(block, kind).stream()).findFirst()
                .or(() -> choice.choose(coin, type, kind).measurement().flatMap(block -> recorded(block, kind)));
    }

    static Optional<Recorded> recorded(Measurement block, Kind kind) {
        return block.reading(kind).map(Written::value).filter(Reading.Read.class::isInstance).map(Reading.Read.class::cast)
                .filter(Figure::isExact).map(read -> new Recorded(Figure.of(read), block.convention(),
                        read.qualifier() != Reading.Qualifier.NONE));
    }
}
