/** Bytes to text with places. */
package exergue.source.text;
