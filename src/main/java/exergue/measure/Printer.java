package exergue.measure;

/** Readings to printed figures, rounded once, to what both the house and the source support. */
public final class Printer {

    private Printer() { }

    /**
     * @param figure "3.87", "18 × 17", "17–19", "c. 3.9"; no unit
     * @param unit   "g", "mm", "h"
     */
    public record Printed(String figure, String unit, PrintForm form) {

        /** Figure and unit with the house's space between them. */
        public String text() {
            return figure + form.unitSpace() + unit;
        }
    }

    public static Printed print(Reading.Read reading, PrintForm form) {
        throw new IllegalStateException("written by the measure room");
    }
}
