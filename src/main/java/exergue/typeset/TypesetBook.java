package exergue.typeset;

import exergue.edition.PageMap;
import exergue.finding.Findings;

/**
 * What came of the setting.
 *
 * @param pages    where everything stands; {@link PageMap#UNKNOWN} if no pages were made
 * @param findings with an error among them, nothing was written
 */
public record TypesetBook(PageMap pages, Findings findings) { }
