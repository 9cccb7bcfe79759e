/** Photographs as they are printed: which part of a file, how large, cut out or as it is; and what speaks against printing it. */
package exergue.photo.print;
