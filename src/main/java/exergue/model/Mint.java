package exergue.model;

import exergue.dating.Dating;
import java.util.Optional;

/** A mint, in the order of the book. @param name the heading; @param dates when it worked; @param note a paragraph under the heading */
public record Mint(Written<String> id, Written<String> name, Optional<Written<Dating>> dates, Optional<Phrase> note) { }
