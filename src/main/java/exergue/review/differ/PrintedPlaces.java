package exergue.review.differ;

import exergue.measure.PrintForm;

/** How many places a printed figure has. */
public final class PrintedPlaces {

    private PrintedPlaces() { }

    /** Figures after the first decimal mark: two in "3.87 g". */
    public static int of(String printed, PrintForm form) {
        int mark = printed.indexOf(form.decimalMark());
        String after = mark < 0 ? "" : printed.substring(mark + form.decimalMark().length());
        return (int) after.chars().takeWhile(Character::isDigit).count();
    }
}
