package exergue.model;

/**
 * Why something that is found in one entry is right as it is.
 *
 * @param finding the code of the finding
 * @param because the reason, in the author's words
 */
public record Excuse(Written<String> finding, Written<String> because) { }
