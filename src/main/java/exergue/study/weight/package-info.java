/** What weights of groups tell: tables, frequencies, histograms, comparisons, the distance from a standard. */
package exergue.study.weight;
