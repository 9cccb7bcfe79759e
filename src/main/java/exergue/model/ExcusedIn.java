package exergue.model;

import java.util.Optional;

/**
 * What the house excuses in a file whose entries cannot say so themselves: a chapter, the list of works, a file of lists.
 *
 * @param file  path inside the tree
 * @param entry id of the one entry of that file that is meant; empty for the whole file
 */
public record ExcusedIn(Written<String> file, Optional<Written<String>> entry, Excuse excuse) { }
