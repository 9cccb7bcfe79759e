/** Works from reference managers: works.json (CSL-JSON) and works.bib (BibTeX), joined with works.yaml. */
package exergue.source.works;
