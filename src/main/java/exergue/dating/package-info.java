/**
 * Dates: from what an entry says in EDTF (Extended Date/Time Format, ISO 8601-2:2019) to what the house prints.
 *
 * <p>{@link exergue.dating.DatingParser} turns a text into a {@link exergue.dating.Dating} or says why it cannot, with
 * offset and remedy; {@link exergue.dating.FromWords} knows what authors write instead (“c. 120–110 BC”) and which EDTF
 * they mean by it; {@link exergue.dating.DatePrinter} prints a dating in words, as {@link exergue.dating.DateStyle} says;
 * {@link exergue.dating.Era} counts the years that stand on the coins themselves.
 *
 * <p>Years are counted as EDTF counts them, where 0 is 1 BC and -119 is 120 BC; only the printer changes that, so that
 * no year 0 is ever printed. EDTF names days by the Gregorian calendar carried backwards; the trade gives ancient days
 * by the Julian. Nothing is converted here: days and months are printed as they were written. For years alone the
 * difference does not matter.
 *
 * <p>Of EDTF, levels 0 to 2, these are left out, because a coin has no use for them: times of day, sets, years with
 * exponents or significant digits, and dates whose year is wholly unknown. Each is refused with a word why.
 *
 * <p>Nothing here knows of files, findings or coins.
 */
package exergue.dating;
