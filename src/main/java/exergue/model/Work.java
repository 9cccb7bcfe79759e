package exergue.model;

import java.util.Optional;

/**
 * A work that is cited.
 *
 * @param sign     abbreviation printed in references: "Hallam"
 * @param standard whether it belongs in the list of abbreviations, if the book has one, and not among the works cited
 */
public record Work(Written<String> id, Written<String> sign, boolean standard, Description description) {

    /** What the reader is told of the work behind the sign. */
    public sealed interface Description { }

    /**
     * Composed by the author and printed as it stands, from works.yaml.
     *
     * @param authors as printed; empty for a work without one
     * @param in      journal, series or collected volume, set in italic
     * @param rest    volume, place, pages: everything after the title, as printed
     */
    public record AsPrinted(Optional<Written<String>> authors, Optional<Written<String>> year, Written<String> title,
                            Optional<Written<String>> in, Optional<Written<String>> rest) implements Description { }

    /** From a reference manager; a citation style says how it is set. */
    public record Item(WorkItem item) implements Description { }
}
