package exergue.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.dating.Dating;
import exergue.dating.DatingParser;
import exergue.dating.Parsed;
import exergue.finding.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProvenanceTest {

    private static final Place PLACE = Place.ofFile("coins/lk-1.yaml");

    /** "A 1890" or "B" */
    private static Provenance step(String text) {
        String[] parts = text.strip().split(" ");
        Optional<Written<Dating>> date = parts.length == 1 ? Optional.empty()
                : Optional.of(new Written<>(((Parsed.Accepted) DatingParser.parse(parts[1])).dating(), PLACE));
        return new Provenance(new Written<>(parts[0], PLACE), date, Optional.empty());
    }

    /** Histories are told in order of date: common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "A 1890, B, C 1931       | A B C",
        "C 1931, D, A 1890, B    | A B C D",
        "X, B 1931, A 1890       | X A B",
        "B 1900/1920, A 1890/1910, C 1905 | A B C",
        "A, B, C                 | A B C",
        "B 1931, C 1931, A 19XX  | A B C"})
    void datedStepsAreInOrderAndOthersStayBehindWhatTheyFollow(String written, String printed) {
        List<Provenance> steps = new ArrayList<>();
        List.of(written.split(",")).forEach(text -> steps.add(step(text)));
        assertEquals(printed, names(Provenance.inOrder(steps)));
    }

    @Property
    void nothingIsLostAndDatedStepsAscend(@ForAll("histories") List<Provenance> steps) {
        List<Provenance> ordered = Provenance.inOrder(steps);
        assertEquals(new HashSet<>(steps), new HashSet<>(ordered));
        assertEquals(steps.size(), ordered.size());
        List<Integer> years = ordered.stream().flatMap(step -> step.date().stream())
                .map(date -> date.value().earliest().orElseThrow()).toList();
        assertEquals(years.stream().sorted().toList(), years);
        assertEquals(ordered, Provenance.inOrder(ordered));
    }

    @Provide
    Arbitrary<List<Provenance>> histories() {
        return Arbitraries.integers().between(1800, 1850).injectNull(0.3)
                .map(year -> year == null ? "S" : "S " + year).map(ProvenanceTest::step).list().ofMaxSize(8);
    }

    private static String names(List<Provenance> steps) {
        return steps.stream().map(step -> step.words().value()).collect(Collectors.joining(" "));
    }
}
