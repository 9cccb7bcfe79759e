/** What a value can be, and how keys are declared, so that reading, reference and schema share one description. */
package exergue.source.shape;
