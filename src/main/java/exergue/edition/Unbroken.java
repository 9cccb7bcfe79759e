package exergue.edition;

import java.util.regex.Pattern;

/** Numbers of collections, finds and works hold together at the end of a line: "ARK 18/610", but "II, p. 203". */
final class Unbroken {

    private static final Pattern SPACE = Pattern.compile("(?<![,;]) ");

    private Unbroken() { }

    /** Spaces that no longer break, but for those after a comma or semicolon, where a long number may. */
    static String number(String number) {
        return SPACE.matcher(number).replaceAll("\u00A0");
    }
}
