/** What diameters of groups tell. */
package exergue.study.diameter;
