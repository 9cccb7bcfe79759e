package exergue.model;

import java.util.Optional;

/** A mint, in the order of the book. @param name the heading; @param note a paragraph under the heading */
public record Mint(Written<String> id, Written<String> name, Optional<Phrase> note) { }
