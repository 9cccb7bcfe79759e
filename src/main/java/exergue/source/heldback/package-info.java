/** What is not to be shown of the source beside findings: exact find-spots, even where their file is broken. */
package exergue.source.heldback;
