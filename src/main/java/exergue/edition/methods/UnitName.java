package exergue.edition.methods;

/**
 * A unit as a methods statement calls it.
 *
 * @param plural as it stands after "in", "en"
 * @param source the publication that fixes its factor, in the words of the language
 */
public record UnitName(String singular, String plural, String source) { }
