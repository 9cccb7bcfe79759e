package exergue.cli.report;

/** In which form findings are given out. */
public enum Format {
    /** With the source line and a caret under the value. */
    FULL,
    /** One line each. */
    CONCISE,
    /** This tool's own JSON. */
    JSON,
    /** SARIF 2.1.0, as code-hosting services and editors read it. */
    SARIF;

    /** True where a program reads it, so that nothing else may stand on the same stream. */
    public boolean forMachines() {
        return this == JSON || this == SARIF;
    }

    /** The whole report; ends with a line end unless it is empty. */
    public String render(Report report, Ink ink) {
        return switch (this) {
            case FULL -> new FullText(report, ink).render();
            case CONCISE -> ConciseText.render(report, ink);
            case JSON -> JsonReport.render(report);
            case SARIF -> SarifReport.render(report);
        };
    }

    /** As typed after {@code --format}. */
    @Override
    public String toString() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
