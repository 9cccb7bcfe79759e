package exergue.model;

import java.util.Optional;

/** A collection that holds coins. @param name in full; @param sign short form printed in rows */
public record Collection(Written<String> id, Written<String> name, Written<String> sign,
                         Optional<Written<String>> place) { }
