package exergue.model;

import exergue.finding.Place;
import exergue.measure.Reading;
import java.util.List;
import java.util.Optional;

/**
 * One coin, one file.
 *
 * @param measured     the main measurement
 * @param alsoMeasured other people's figures for the same coin
 * @param damage       what has changed its weight
 * @param weightCounts the author's word on whether the weight counts in statistics, against the rule for damage
 * @param eraDate      year that stands on this coin; where its type has one too, this one is meant
 * @param obverse      only what differs from the type
 * @param countermark what was punched into the coin after it was struck: "heron in circle"
 * @param excused      what is found in this entry and right as it is
 * @param number       pinned catalogue number; empty where the order of the book gives it
 */
public record Coin(Written<String> id, Written<String> type, Optional<Written<Integer>> number,
                   Optional<Measurement> measured, List<Measurement> alsoMeasured,
                   List<Written<Damage>> damage, Optional<WeightCounts> weightCounts,
                   Optional<Dies> dies, Optional<EraDate> eraDate, Side obverse, Side reverse,
                   Optional<Holding> holding, Optional<Find> find, List<Provenance> provenance, Optional<Written<String>> countermark,
                   List<Reference> references, Optional<Photograph> photograph,
                   Optional<Written<String>> diameterMeans, List<Prose> note, List<Excuse> excused, Place place) {

    public Coin {
        alsoMeasured = List.copyOf(alsoMeasured);
        damage = List.copyOf(damage);
        provenance = List.copyOf(provenance);
        references = List.copyOf(references);
        note = List.copyOf(note);
        excused = List.copyOf(excused);
    }

    /** Damage takes a weight out of statistics; the author's own word, with its reason, goes before that rule. */
    public boolean weightInStatistics() {
        return weightCounts.map(word -> word.counts().value()).orElse(damage.isEmpty());
    }

    public record WeightCounts(Written<Boolean> counts, Written<String> why) { }

    /** The names of the dies, and the states in which they struck the coin, where the entry says so. */
    public record Dies(Optional<Written<String>> obverse, Optional<Written<String>> reverse, Optional<DieState> obverseState,
                       Optional<DieState> reverseState) {

        /** Dies of whose state nothing is said. */
        public Dies(Optional<Written<String>> obverse, Optional<Written<String>> reverse) {
            this(obverse, reverse, Optional.empty(), Optional.empty());
        }
    }

    /** @param number from 1, the earliest known state of the die; @param flaw by which the state is known */
    public record DieState(Written<Integer> number, Optional<Written<String>> flaw) { }

    public record Holding(Written<String> collection, Optional<Written<String>> number) { }

    /** @param context layer or trench as printed; @param number the excavation's own number */
    public record Find(Written<String> spot, Optional<Written<String>> context, Optional<Written<String>> number) { }

    /**
     * @param width      how wide each whole picture is when the coin on it is as large as in life
     * @param credit     whom to thank, as printed
     * @param permission who allows it to be printed, in words; "not needed" where nobody need
     * @param scale      how large this coin is printed, whatever the house does with others
     */
    public record Photograph(Optional<Written<String>> obverse, Optional<Written<String>> reverse,
                             Optional<Written<Reading>> width, Optional<Written<String>> credit,
                             Optional<Written<String>> permission, Optional<PrintScale> scale) {

        public static final String NOT_NEEDED = "not needed";
    }
}
