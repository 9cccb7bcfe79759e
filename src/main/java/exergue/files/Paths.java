package exergue.files;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** Path arithmetic inside a tree; text only, the disk is not asked. */
public final class Paths {

    private Paths() { }

    /** The path in plain form, or empty if it is absolute, has a drive or scheme, or leads out of the tree. */
    public static Optional<String> inside(String path) {
        if (path.isBlank() || path.startsWith("/") || path.contains("\\") || path.contains(":")
                || path.indexOf('\0') >= 0) {
            return Optional.empty();
        }
        Deque<String> steps = new ArrayDeque<>();
        for (String step : path.split("/")) {
            if (step.equals("..")) {
                if (steps.isEmpty()) {
                    return Optional.empty();
                }
                steps.removeLast();
            } else if (!step.isEmpty() && !step.equals(".")) {
                steps.addLast(step);
            }
        }
        return steps.isEmpty() ? Optional.empty() : Optional.of(String.join("/", steps));
    }
}
