package exergue.source.text;

import exergue.finding.Finding;
import exergue.finding.Findings;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Where one run of the reader writes down what it finds. Never shared: what is read at the same time has a notebook of
 * its own, which is added when it is done.
 */
public final class Notebook {

    private final List<Finding> findings = new ArrayList<>();

    public void add(Finding finding) {
        findings.add(finding);
    }

    public void add(Notebook other) {
        findings.addAll(other.findings);
    }

    /** Says more of findings on which there is more to say once everything has been read. */
    public void complete(UnaryOperator<Finding> more) {
        findings.replaceAll(more);
    }

    public Findings findings() {
        return Findings.of(findings);
    }
}
