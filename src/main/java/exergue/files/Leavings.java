package exergue.files;

import java.util.regex.Pattern;

/**
 * Files that programs for writing put beside the one that is written, for a moment or for good: the text as it was before,
 * a trial whether the folder can be written. They are no part of a source. Names from the manuals of Emacs (“Backup Names”,
 * “Auto Save Files”); from memory: the trial file of Vim, which is named 4913, and the locks of office programs.
 */
final class Leavings {

    private static final Pattern NAME = Pattern.compile(".*~|#.*#|~\\$.*|4913");

    private Leavings() { }

    /** @param name of a file, without its folder */
    static boolean isOne(String name) {
        return NAME.matcher(name).matches();
    }
}
