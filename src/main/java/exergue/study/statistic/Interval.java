package exergue.study.statistic;

/** Between which figures a statistic is expected to lie. */
public record Interval(double from, double to) { }
