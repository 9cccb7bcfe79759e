/** The reference pages of keys and units and the JSON Schemas, written from what the reader itself reads with. */
package exergue.source.reference;
