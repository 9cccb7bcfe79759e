package exergue.edition;

import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Printer;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.HouseStyle;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was measured and stands among the remarks: thickness and density, a fineness, the figures of other hands. */
final class MeasuredRemarks {

    private static final char NO_BREAK_SPACE = '\u00A0';

    private final Catalogue catalogue;
    private final HouseStyle style;
    private final ReadingChoice choice;
    private final MeasurementLine line;
    private final BookWords words;

    MeasuredRemarks(Catalogue catalogue, MeasurementLine line, BookWords words) {
        this.catalogue = catalogue;
        this.style = catalogue.style();
        this.choice = ReadingChoice.of(style);
        this.line = line;
        this.words = words;
    }

    /** Without their capitals and full stops. */
    List<String> of(Coin coin, Type type) {
        List<String> remarks = new ArrayList<>();
        for (Kind kind : style.inRemarks()) {
            String member = line.member(coin, type, kind);
            if (!member.isEmpty()) {
                remarks.add(words.of(kind) + " " + member);
            }
        }
        if (style.printed().contains(Kind.DENSITY)) {
            Fineness.of(coin, type, choice).map(this::sentence).ifPresent(remarks::add);
        }
        if (style.otherHands() == HouseStyle.OtherHands.PRINTED) {
            otherHands(coin, type).forEach((source, figures) -> remarks.add(source + words.language().colon() + String.join(", ", figures)));
        }
        return remarks;
    }

    private String sentence(Fineness fineness) {
        return words.of(BookWord.FINENESS).replace("{share}", fineness.share().percent())
                .replace("{metal}", words.metal(fineness.alloy().heavier()))
                .replace("{other}", words.metal(fineness.alloy().lighter()));
    }

    /** "Pellingham: 59.7 gr (3.87 g), 0.70 in (18 mm)": each hand once, whatever the number of its blocks. */
    private Map<String, List<String>> otherHands(Coin coin, Type type) {
        Map<String, List<String>> hands = new LinkedHashMap<>();
        for (OtherHands.Other other : OtherHands.of(coin, type, style)) {
            hands.computeIfAbsent(name(other.measurement().convention()), any -> new ArrayList<>()).add(figure(other));
        }
        return hands;
    }

    private String figure(OtherHands.Other other) {
        String printed = Printer.print(other.read(), style.form()).text();
        String recorded = other.read().recorded().strip();
        return (other.read().converted() ? recorded + " (" + printed + ")" : printed).replace(' ', NO_BREAK_SPACE);
    }

    /** The sign of the published work, or else the short title of the convention, or its title. */
    private String name(Convention convention) {
        return convention.work().flatMap(work -> Optional.ofNullable(catalogue.works().get(work)))
                .map(work -> work.sign().value()).or(convention::shortTitle).orElse(convention.title());
    }
}
