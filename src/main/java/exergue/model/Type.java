package exergue.model;

import exergue.dating.Dating;
import exergue.finding.Place;
import exergue.measure.Alloy;
import java.util.List;
import java.util.Optional;

/**
 * A type, described once; coins point to it.
 *
 * @param order         place among the types of its ruler; types without one follow, by id
 * @param issue         small heading above this type and those after it with the same issue; types without one stand
 *                      before those with one
 * @param date          when it was struck
 * @param eraDate       year of an era that stands on the coins
 * @param standard      weight standard
 * @param uniface       one side blank: there is no axis
 * @param alloy         the two metals a fineness is worked out for, where a coin has a density
 * @param diameterMeans what was measured on a polygonal or irregular flan: "across the flats"
 * @param keywords      what the index of types has it under: "heron"
 * @param excused       what is found in this entry and right as it is
 * @param limits        what weights and diameters the author expects; empty where not declared
 */
public record Type(Written<String> id, Written<String> mint, Optional<Written<String>> ruler,
                   Optional<Written<Integer>> order, Optional<Written<String>> issue,
                   Written<String> denomination, Written<String> metal, Optional<Written<Alloy>> alloy,
                   Optional<Written<Dating>> date, Optional<EraDate> eraDate,
                   Optional<Written<String>> standard, Written<Shape> shape, Written<Making> making,
                   Written<Boolean> uniface, Optional<Written<String>> diameterMeans,
                   Side obverse, Side reverse, List<Reference> references, List<Written<String>> keywords, Optional<Limits> limits,
                   List<Prose> note, List<Excuse> excused, Place place) {

    public Type {
        references = List.copyOf(references);
        keywords = List.copyOf(keywords);
        note = List.copyOf(note);
        excused = List.copyOf(excused);
    }

    /** False where an axis means nothing: one side is blank, or several punches made the coin (common practice, no source). */
    public boolean hasAxis() {
        return !uniface.value() && making.value() != Making.PUNCHED;
    }
}
