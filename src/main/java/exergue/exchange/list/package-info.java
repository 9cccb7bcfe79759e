/**
 * Lists of somebody else's, in: a spreadsheet saved as CSV becomes entries of coins. {@code SheetReader} gives rows and cells with
 * their places, {@code RowReader} makes a draft of an entry of each row, {@code Entering} holds the drafts against the catalogue.
 */
package exergue.exchange.list;
