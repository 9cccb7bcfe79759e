/** Markdown to prose: what is not prose is refused with a finding. */
package exergue.source.markdown;
