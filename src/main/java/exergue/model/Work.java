package exergue.model;

import java.util.Optional;

/**
 * A work that is cited.
 *
 * @param sign    abbreviation printed in references: "Hallam"
 * @param authors as printed; empty for a work without one
 * @param in      journal, series or collected volume, set in italic
 * @param rest    volume, place, pages: everything after the title, as printed
 */
public record Work(Written<String> id, Written<String> sign, Optional<Written<String>> authors,
                   Optional<Written<String>> year, Written<String> title, Optional<Written<String>> in,
                   Optional<Written<String>> rest) { }
