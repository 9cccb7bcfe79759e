package exergue.study.match;

/**
 * How far two readings of one coin lie apart.
 *
 * @param bias fresh less recorded, on average, in g or mm; 0 for axes
 * @param sd   of the differences, in g, mm or hours
 */
record HandError(double bias, double sd) {

    private static final double ROOT_OF_TWO_PI = Math.sqrt(2 * Math.PI);

    /** Density of the normal distribution at this difference. */
    double density(double difference) {
        double z = (difference - bias) / sd;
        return Math.exp(-z * z / 2) / (sd * ROOT_OF_TWO_PI);
    }

    HandError times(double factor) {
        return new HandError(bias, sd * factor);
    }
}
