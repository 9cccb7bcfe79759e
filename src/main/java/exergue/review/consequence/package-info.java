/** What changes of entries do to the rest of the book: numbers, means, counts, links of dies, concordances, print. */
package exergue.review.consequence;
