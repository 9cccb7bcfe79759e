package exergue.edition;

/**
 * Names of the places in a book that a page number or a link can be asked of. A coin's is its id; all others have a
 * word and a full stop before theirs, so that two things with the same id stay apart.
 */
public final class Anchors {

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

    public static String work(String id) {
        return "work." + id;
    }

    /** @param name of the part in the plan, or the path of its chapter */
    public static String part(String name) {
        return "part-" + name.replaceAll("[^\\p{L}\\p{N}]+", "-");
    }
}
