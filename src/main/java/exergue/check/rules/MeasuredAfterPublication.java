package exergue.check.rules;

import exergue.check.Rule;
import exergue.check.YearsInWords;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Convention;
import exergue.model.Catalogue;
import exergue.model.Work;
import exergue.model.WorkItem;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Figures are said to have been taken after the work appeared from which they come. */
public final class MeasuredAfterPublication implements Rule {

    static final Code CODE = new Code("measured-after-publication", Severity.WARNING,
            "Figures are said to be later than the work they come from",
            "A convention whose figures come from a work says when they were taken. A year after the work appeared is a slip in one of "
                    + "the two, or the wrong work is named.",
            """
                    # works.yaml has hallam-1931 with “year: '1931'”
                    hallam:
                      title: Hallam’s list
                      when: '1939'
                      work: hallam-1931
                    """,
            """
                    hallam:
                      title: Hallam’s list
                      when: '1929'
                      work: hallam-1931
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Written<Convention> convention : catalogue.conventions().values()) {
            convention.value().work().map(catalogue.works()::get).flatMap(work -> fault(convention, work)).ifPresent(faults::add);
        }
        return faults;
    }

    private static Optional<Finding> fault(Written<Convention> convention, Work work) {
        String when = convention.value().when().orElse("");
        List<Integer> taken = YearsInWords.exact(when);
        OptionalInt appeared = year(work.description());
        if (taken.isEmpty() || appeared.isEmpty() || Collections.min(taken) <= appeared.getAsInt()) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(CODE, convention.place(), convention.value().id() + ".when", "The figures of “"
                        + convention.value().id() + "” are said to be of “" + when + "”, and the work “" + work.id()
                        + "” that they come from is of " + appeared.getAsInt() + ".",
                "Mend “when”, or the year of the work; or name another work.").withRelated(work.id().place(), "the work"));
    }

    /** In which it appeared, of several years the last. */
    private static OptionalInt year(Work.Description description) {
        if (description instanceof Work.AsPrinted printed) {
            return printed.year().map(year -> YearsInWords.last(year.value())).orElse(OptionalInt.empty());
        }
        WorkItem.Date issued = ((Work.Item) description).item().dates().get("issued");
        return issued == null ? OptionalInt.empty()
                : issued.parts().stream().filter(date -> !date.isEmpty()).mapToInt(date -> date.get(0)).max();
    }
}
