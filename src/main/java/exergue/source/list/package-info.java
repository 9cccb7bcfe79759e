/** How a list of somebody else's is read: what its file beside it says. The list itself is read by {@code exchange.list}. */
package exergue.source.list;
