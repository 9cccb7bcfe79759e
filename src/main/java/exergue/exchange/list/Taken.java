package exergue.exchange.list;

import exergue.exchange.list.RowFindings.Spot;
import exergue.source.list.ListColumn;

/**
 * What a row says of one thing.
 *
 * @param text  with words translated and signs answered
 * @param spot  the cell, or the row where it holds for every coin
 * @param said  of the column
 * @param ofRow false for what holds for every coin of the list
 */
record Taken(String text, Spot spot, ListColumn said, boolean ofRow) { }
