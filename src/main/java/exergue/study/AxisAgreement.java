package exergue.study;

/**
 * How far two hands agree in the axes of the same coins.
 *
 * @param n             coins with an axis from both
 * @param equal         coins whose axes are the same to half an hour
 * @param withinOneHour coins whose axes are an hour apart or less, the equal ones among them
 */
public record AxisAgreement(int n, int equal, int withinOneHour) {

    private static final double HALF_AN_HOUR = 0.5;
    /** An hour from degrees: 30 degrees may come out a little above 1 h. */
    private static final double AN_HOUR = 1.0 + 1e-9;

    /** False for so few coins that their agreement says nothing. */
    public boolean tells() {
        return n >= Differences.FEWEST;
    }

    AxisAgreement and(double first, double second) {
        double apart = Math.abs(first - second) % 12;
        double hours = Math.min(apart, 12 - apart);
        return new AxisAgreement(n + 1, equal + (hours < HALF_AN_HOUR ? 1 : 0),
                withinOneHour + (hours <= AN_HOUR ? 1 : 0));
    }
}
