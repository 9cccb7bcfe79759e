package exergue.model;

import exergue.finding.Severity;
import java.util.Optional;

/** What a house does with one kind of finding. */
public enum Treatment {
    ERROR("error", Severity.ERROR), WARNING("warning", Severity.WARNING), NOTE("note", Severity.NOTE), OFF("off", null);

    private final String word;
    private final Severity severity;

    Treatment(String word, Severity severity) {
        this.word = word;
        this.severity = severity;
    }

    public String word() {
        return word;
    }

    /** Empty where the house does not want to hear of it. */
    public Optional<Severity> severity() {
        return Optional.ofNullable(severity);
    }
}
