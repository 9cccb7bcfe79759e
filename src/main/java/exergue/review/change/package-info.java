/** What is otherwise in one catalogue than in another, as data. Putting it into words is done elsewhere. */
package exergue.review.change;
