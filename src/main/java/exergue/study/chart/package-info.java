/**
 * Charts as data, and their drawing as SVG in one place ({@link exergue.study.chart.ChartDrawing}): black and greys, lines and
 * patterns, names beside what they mean, in the book's face at the size of captions.
 */
package exergue.study.chart;
