package exergue.edition;

import exergue.model.Caption;
import java.util.regex.Pattern;

/**
 * Names of the places in a book that a page number or a link can be asked of. A coin's is its id; all others have a
 * word and a full stop before theirs, so that two things with the same id stay apart.
 */
public final class Anchors {

    private static final Pattern ODD = Pattern.compile("[^A-Za-z0-9.-]");

    private Anchors() { }

    public static String coin(String id) {
        return id;
    }

    public static String type(String id) {
        return "type." + id;
    }

    public static String mint(String id) {
        return "mint." + id;
    }

    /** A ruler has one heading at each mint that struck for him. */
    public static String ruler(String mint, String ruler) {
        return "ruler." + mint + "." + ruler;
    }

    /** @param nth which issue heading of the book, from 1 */
    public static String issue(int nth) {
        return "issue." + nth;
    }

    /** Ids from reference managers may have any signs; those that an address in a book cannot have are spelt out. */
    public static String work(String id) {
        return "work." + ODD.matcher(id).replaceAll(odd -> "_" + Integer.toHexString(odd.group().codePointAt(0)));
    }

    /** @param number in roman figures */
    public static String plate(String number) {
        return "plate." + number;
    }

    /** Where the plates show a coin. */
    public static String onPlate(String coin) {
        return "shown." + coin;
    }

    /** Of a table or figure: by its id if it has one, so that the address stays; two full stops before a number. */
    public static String caption(Caption caption, int number) {
        return caption.kind().word() + caption.id().map(id -> "." + id.value()).orElse(".." + number);
    }

    /** @param kind of list: "index", "concordance.work"; @param id within that kind */
    public static String listing(String kind, String id) {
        return kind + "." + id;
    }

    /** @param name of the part in the plan, or the path of its chapter */
    public static String part(String name) {
        return "part-" + name.replaceAll("[^\\p{L}\\p{N}]+", "-");
    }
}
