/** The keys of every file, each written once. */
package exergue.source.keys;
