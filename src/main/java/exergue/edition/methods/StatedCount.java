package exergue.edition.methods;

/**
 * A count that a text states.
 *
 * @param sentence it stands in
 * @param count    the number
 * @param noun     what is counted, by the name of its counter: "coins", "weights", "diameters" or "die-axes"
 * @param words    as written
 */
public record StatedCount(String sentence, int count, String noun, String words) { }
