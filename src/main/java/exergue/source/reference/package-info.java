/** The reference page and the JSON Schemas, written from the keys. */
package exergue.source.reference;
