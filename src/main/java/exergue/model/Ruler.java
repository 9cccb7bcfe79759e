package exergue.model;

import exergue.dating.Dating;
import java.util.Optional;

/** A ruler, magistrate or period under whom coins were struck. @param dates of the reign or period */
public record Ruler(Written<String> id, Written<String> name, Optional<Written<Dating>> dates,
                    Optional<Phrase> note) { }
