package exergue.photo.print;

import exergue.files.Tree;
import exergue.finding.Findings;

/**
 * Photographs that are ready for the page.
 *
 * @param tree the source tree, and in it the pictures that were made
 */
public record PreparedPictures(PrintedCoins pictures, Tree tree, Findings findings) { }
