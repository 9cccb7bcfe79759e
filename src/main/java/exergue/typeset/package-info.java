/** Typesetting: the book as data becomes pages. */
package exergue.typeset;
