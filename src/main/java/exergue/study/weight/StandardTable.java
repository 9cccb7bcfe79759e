package exergue.study.weight;

import exergue.model.CoinGroup;
import exergue.model.StudyWord;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Request;
import exergue.study.figure.SideBySide;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.statistic.Interval;
import exergue.study.statistic.Peak;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far the peak of a group lies from the weight that its coins were meant to have, and no more. */
final class StandardTable {

    private final Request request;
    private final Wording wording;

    StandardTable(Request request) {
        this.request = request;
        this.wording = request.wording();
    }

    /** Empty where no group declares a standard. */
    Optional<FigureTable> table() {
        if (request.standard().isEmpty()) {
            return Optional.empty();
        }
        boolean worn = request.groups().stream().anyMatch(group -> wear(group).isPresent());
        List<StudyWord> heads = new ArrayList<>(List.of(StudyWord.COUNTED, StudyWord.STANDARD_HEAD, StudyWord.PEAK, StudyWord.PEAK_INTERVAL,
                StudyWord.DISTANCE, StudyWord.DISTANCE_INTERVAL));
        if (worn) {
            heads.addAll(List.of(StudyWord.WEAR_LOSS, StudyWord.DISTANCE_CORRECTED));
        }
        List<String> notes = new ArrayList<>(List.of(wording.of(StudyWord.STANDARD_NOTE)));
        if (worn) {
            notes.add(wording.of(StudyWord.WEAR_NOTE));
        }
        request.groups().forEach(group -> sentence(group).ifPresent(notes::add));
        return Optional.of(new SideBySide(request).table(heads, group -> figures(group, worn), notes));
    }

    /** Of a group, or of the first that has one. */
    private Optional<CoinGroup.WeightStandard> standard(Coins group) {
        return group.declared().flatMap(CoinGroup::standard).or(request::standard);
    }

    private static Optional<Double> wear(Coins group) {
        return group.declared().flatMap(CoinGroup::wear).map(wear -> wear.loss().doubleValue());
    }

    private List<String> figures(Coins group, boolean worn) {
        int d = WeightPlaces.of(group, wording.form());
        double standard = Standard.weight(standard(group).orElseThrow());
        Optional<Peak> peak = Peak.of(group.weights());
        List<String> figures = new ArrayList<>(List.of(String.valueOf(group.weights().length), wording.number(standard, d),
                wording.number(peak.map(Peak::at), d), wording.interval(peak.map(Peak::interval), d),
                peak.map(p -> wording.signed(p.at() - standard, d)).orElse(Wording.NONE),
                peak.map(p -> signed(p.interval(), standard, d)).orElse(Wording.NONE)));
        if (worn) {
            Optional<Double> loss = wear(group);
            figures.add(wording.number(loss, d));
            figures.add(peak.isPresent() && loss.isPresent() ? wording.signed(peak.get().at() + loss.get() - standard, d) : Wording.NONE);
        }
        return figures;
    }

    private String signed(Interval peak, double standard, int d) {
        return wording.signed(peak.from() - standard, d) + "\u00A0" + wording.of(StudyWord.TO) + "\u00A0" + wording.signed(peak.to() - standard, d);
    }

    private Optional<String> sentence(Coins group) {
        int d = WeightPlaces.of(group, wording.form());
        CoinGroup.WeightStandard standard = standard(group).orElseThrow();
        double weight = Standard.weight(standard);
        return Peak.of(group.weights()).map(peak -> wording.of(
                peak.interval().from() > weight ? StudyWord.PEAK_ABOVE : peak.interval().to() < weight ? StudyWord.PEAK_BELOW : StudyWord.PEAK_AGREES,
                "name", group.name(), "distance", wording.number(Math.abs(peak.at() - weight), d), "standard", Standard.name(standard, wording)));
    }
}
