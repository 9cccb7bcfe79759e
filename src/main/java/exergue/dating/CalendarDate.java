package exergue.dating;

import java.util.OptionalInt;

/**
 * One date, as fine as it is known.
 *
 * @param years         one year, or those that fit where digits are unspecified: {@code -012X} is -129 to -120
 * @param month         1 to 12; or 21 to 41, one of EDTF's seasons, quarters and halves of a year
 * @param day           1 to 31; only with a month of 1 to 12
 * @param qualification said of any part is said of the whole
 */
public record CalendarDate(Years years, OptionalInt month, OptionalInt day, Qualification qualification) { }
