package exergue.source.text;

import exergue.finding.Finding;
import exergue.finding.Findings;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * Where one run of the reader writes down what it finds. Never shared: what is read at the same time has a notebook of
 * its own, which is added when it is done.
 */
public final class Notebook {

    private final List<Finding> findings = new ArrayList<>();
    private final Set<String> unread = new TreeSet<>();

    public void add(Finding finding) {
        findings.add(finding);
    }

    public void add(Notebook other) {
        findings.addAll(other.findings);
        unread.addAll(other.unread);
    }

    /** Notes that nothing of a file is known, since it cannot be read. */
    public void leaveUnread(String file) {
        unread.add(file);
    }

    /** The files of which nothing is known. */
    public Set<String> unread() {
        return Set.copyOf(unread);
    }

    /** Says more of findings on which there is more to say once everything has been read. */
    public void complete(UnaryOperator<Finding> more) {
        findings.replaceAll(more);
    }

    public Findings findings() {
        return Findings.of(findings);
    }
}
