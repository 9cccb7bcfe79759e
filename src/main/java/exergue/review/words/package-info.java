/** Changes in the words of the trade. What a sentence looks like on a screen or a page is decided elsewhere. */
package exergue.review.words;
