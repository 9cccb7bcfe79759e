package exergue.edition.figures;

import exergue.edition.EditionCodes;
import exergue.finding.Finding;
import exergue.model.FigureKey;
import exergue.model.Prose;
import exergue.model.Written;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The steps that a block of figures asks for: "0.05 g". */
final class StepsWritten {

    private static final Pattern SHAPE = Pattern.compile("([0-9]{1,4}(?:[.,][0-9]{1,4})?)\\s*(?:g|mm)");

    private StepsWritten() { }

    /** In grams or millimetres, as the subject has it; empty where none are asked for, or not in a form that can be read. */
    static Optional<BigDecimal> in(Prose.Figures asked, List<Finding> findings) {
        Optional<Written<String>> said = Optional.ofNullable(asked.said().get(FigureKey.STEPS));
        Optional<BigDecimal> steps = said.map(Written::value).map(SHAPE::matcher).filter(Matcher::matches)
                .map(matcher -> new BigDecimal(matcher.group(1).replace(',', '.'))).filter(step -> step.signum() > 0);
        if (said.isPresent() && steps.isEmpty()) {
            findings.add(Finding.of(EditionCodes.STEPS_NOT_READ, said.get().place(), "", "“" + said.get().value() + "” is no width of steps.",
                    "Write one figure with its unit, such as 0.05 g or 1 mm."));
        }
        return steps;
    }
}
