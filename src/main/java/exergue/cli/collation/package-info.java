/** What a comparison of two states looks like: as text, as Markdown, as JSON. */
package exergue.cli.collation;
