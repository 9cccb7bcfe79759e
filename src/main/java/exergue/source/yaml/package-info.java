/** Text to values with places: YAML without its types, aliases and surprises. */
package exergue.source.yaml;
