/** The pipeline on one screen. */
package exergue;
