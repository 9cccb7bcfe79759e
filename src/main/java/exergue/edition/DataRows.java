package exergue.edition;

import exergue.edition.DataRow.Figure;
import exergue.measure.Kind;
import exergue.measure.Quantity;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.ReadingChoice;
import exergue.model.ReadingChoice.Chosen;
import exergue.model.Side;
import exergue.model.Type;
import exergue.model.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The rows of the data files: one a coin, in the order of the book, with what was recorded beside what is printed. */
public final class DataRows {

    private final Catalogue catalogue;
    private final PageMap pages;
    private final ReadingChoice choice;
    private final Map<String, Type> types;
    private final MeasurementLine line;
    private final DateWords dates;
    private final Map<String, Coin> coins = new HashMap<>();

    private DataRows(Catalogue catalogue, PageMap pages) {
        this.catalogue = catalogue;
        this.pages = pages;
        this.choice = ReadingChoice.of(catalogue.style());
        this.types = Editor.types(catalogue);
        this.line = MeasurementLine.of(catalogue, types);
        this.dates = new DateWords(catalogue.style());
        catalogue.coins().forEach(coin -> coins.put(Anchors.coin(coin.id().value()), coin));
    }

    /** @param book made of this catalogue; a coin that it prints twice has one row */
    public static List<DataRow> of(Catalogue catalogue, Book book, PageMap pages) {
        DataRows rows = new DataRows(catalogue, pages);
        return Stream.of(book.front(), book.body(), book.back()).flatMap(List::stream)
                .filter(Part.Entries.class::isInstance).map(Part.Entries.class::cast)
                .limit(1)
                .flatMap(part -> part.blocks().stream())
                .filter(EntryBlock.Entry.class::isInstance).map(EntryBlock.Entry.class::cast)
                .flatMap(entry -> entry.specimens().stream())
                .map(rows::row).toList();
    }

    private DataRow row(Specimen specimen) {
        Coin coin = coins.get(specimen.id());
        Type type = types.get(coin.type().value());
        List<Figure> figures = new ArrayList<>();
        for (Kind kind : catalogue.style().printed()) {
            figures.add(figure(choice.choose(coin, type, kind), line.member(coin, type, kind)));
        }
        boolean hasWeight = choice.choose(coin, type, Kind.WEIGHT).figure().isPresent();
        return new DataRow(coin.id().value(), specimen.number(), type.id().value(), type.mint().value(),
                type.ruler().map(Written::value), type.denomination().value(), type.metal().value(), struck(coin, type), figures,
                Fineness.of(coin, type, choice).map(Fineness::text), others(coin, type), specimen.line(),
                coin.damage().stream().map(damage -> damage.value().word()).toList(),
                hasWeight && coin.weightInStatistics(), coin.holding().map(holding -> holding.collection().value()),
                findSpot(coin), pages.folio(specimen.id()));
    }

    private DataRow.Struck struck(Coin coin, Type type) {
        return new DataRow.Struck(type.date().map(date -> new DataRow.Dated(date.value().edtf(), dates.of(date))),
                coin.eraDate().or(type::eraDate).map(dates::of), legend(coin.obverse(), type.obverse()),
                legend(coin.reverse(), type.reverse()));
    }

    private static Optional<String> legend(Side coin, Side type) {
        return coin.legend().or(type::legend).map(legend -> legend.value().printed());
    }

    private List<DataRow.Other> others(Coin coin, Type type) {
        return OtherHands.of(coin, type, catalogue.style()).stream().map(other -> new DataRow.Other(
                other.measurement().by().value(), other.read().kind(), other.read().recorded(),
                other.read().normal().stream().map(Quantity::value).toList(), other.read().first().unit().symbol())).toList();
    }

    private Optional<String> findSpot(Coin coin) {
        return coin.find().map(find -> find.spot().value()).map(id -> catalogue.findSpots().containsKey(id)
                ? catalogue.findSpots().get(id).name().value() : id);
    }

    private static Figure figure(Chosen chosen, String printed) {
        List<Quantity> normal = chosen.figure().map(Reading.Read::normal).orElse(List.of());
        List<BigDecimal> values = normal.stream().map(Quantity::value).toList();
        String unit = normal.isEmpty() ? "" : normal.get(0).unit().symbol();
        return new Figure(chosen.kind(), chosen.status().words(), chosen.why(), chosen.by(),
                chosen.reading().map(reading -> reading.value().recorded()).orElse(""), values, unit, printed);
    }
}
