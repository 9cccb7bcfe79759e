package exergue.cli.report;

import exergue.finding.Severity;

/** Colours of a terminal, or none. */
public enum Ink {
    PLAIN, COLOURED;

    String severity(Severity severity, String text) {
        return switch (severity) {
            case ERROR -> wrap("1;31", text);
            case WARNING -> wrap("1;33", text);
            case NOTE -> wrap("1;36", text);
        };
    }

    String strong(String text) {
        return wrap("1", text);
    }

    String faint(String text) {
        return wrap("2", text);
    }

    private String wrap(String style, String text) {
        return this == PLAIN || text.isEmpty() ? text : "\u001B[" + style + "m" + text + "\u001B[0m";
    }
}
