package exergue.model;

import java.util.Optional;

/** A ruler, magistrate or period under whom coins were struck. @param dates as printed: "c. 212–198 BC" */
public record Ruler(Written<String> id, Written<String> name, Optional<Written<String>> dates,
                    Optional<Phrase> note) { }
