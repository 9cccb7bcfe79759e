/** Revisions of a Git repository as trees that can be read; no git program is needed and nothing is written. */
package exergue.review.git;
