/** What a catalogue says, apart from how it is laid out in its files: entries of fields, each with what stands in it. */
package exergue.review.content;
