/** Two catalogues in, their changes out: pure functions. */
package exergue.review.differ;
