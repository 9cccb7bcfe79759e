package exergue.typeset;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** The failures that veraPDF finds, as clause, test number and message. */
public final class VeraPdf {

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private VeraPdf() { }

    public static List<String> failures(byte[] pdf, PDFAFlavour flavour) throws Exception {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            List<String> failures = new ArrayList<>();
            for (TestAssertion assertion : result.getTestAssertions()) {
                if (assertion.getStatus() == TestAssertion.Status.FAILED) {
                    failures.add(assertion.getRuleId().getClause() + "-" + assertion.getRuleId().getTestNumber() + " "
                            + assertion.getMessage() + " " + assertion.getLocation().getContext());
                }
            }
            if (failures.isEmpty() && !result.isCompliant()) {
                failures.add("not compliant with " + flavour);
            }
            return failures;
        }
    }
}
