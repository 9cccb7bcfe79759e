package exergue.study.chart;

/** A chart as data: what is drawn, with every word in the language of the book. */
public sealed interface Chart permits Histogram, Links, Rose, Scatter { }
