package exergue.study.die;

/** From the least to the greatest that is to be expected in 95 of 100 samples. */
public record Interval(double least, double greatest) { }
