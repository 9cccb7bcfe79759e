package exergue.study.die;

import exergue.study.statistic.Interval;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How many dies there were, by one estimator.
 *
 * @param dies     empty where its formula has no value for the sample
 * @param interval only where its author gives one
 */
public record Estimate(Estimator by, OptionalDouble dies, Optional<Interval> interval) { }
