/** The printed proof of changes: changed entries as the book prints them, before and after, with marks on what differs. */
package exergue.review.sheet;
