package exergue.cli.collation;

import exergue.review.Collation;
import exergue.review.change.Changes;
import exergue.review.change.EntryChange;
import exergue.review.content.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** A comparison with what its two sides are called. @param before as typed, with the commit it stands for */
public record Compared(String before, String after, Collation collation) {

    /** Files that are named one by one. */
    private static final int NAMED = 5;

    /** The whole in one line: "3 coins changed, 1 added; 2 other entries changed." */
    public String summary() {
        Changes changes = collation.changes();
        if (collation.identical()) {
            return "No change: every file is the same.";
        }
        if (changes.isEmpty()) {
            return "No change in content" + (collation.rewritten().isEmpty() ? "." : ": " + files() + " only written otherwise.") + unread();
        }
        List<String> parts = new ArrayList<>();
        add("coin", changes, change -> change.subject().section().equals(Section.COINS), parts);
        add("type", changes, change -> change.subject().section().equals(Section.TYPES), parts);
        add("other entry", changes, change -> !change.subject().section().equals(Section.COINS)
                && !change.subject().section().equals(Section.TYPES), parts);
        String rest = collation.rewritten().isEmpty() ? ""
                : " Without change in content, only written otherwise: " + named(collation.rewritten()) + ".";
        return String.join("; ", parts) + "." + rest + unread();
    }

    private static void add(String one, Changes changes, Predicate<EntryChange> which, List<String> into) {
        List<EntryChange> some = changes.entries().stream().filter(which).toList();
        List<String> parts = new ArrayList<>();
        count(some, EntryChange.Altered.class, one, " changed", parts);
        count(some, EntryChange.Added.class, one, " added", parts);
        count(some, EntryChange.TakenOut.class, one, " taken out", parts);
        if (!parts.isEmpty()) {
            into.add(String.join(", ", parts));
        }
    }

    private static void count(List<EntryChange> some, Class<?> kind, String one, String done, List<String> into) {
        long count = some.stream().filter(kind::isInstance).count();
        if (count > 0) {
            String what = count == 1 ? one : one.equals("other entry") ? "other entries" : one + "s";
            into.add(count + (into.isEmpty() ? " " + what : "") + done);
        }
    }

    private String files() {
        int count = collation.rewritten().size();
        return (count == 1 ? "1 file is" : count + " files are");
    }

    private String unread() {
        List<String> files = collation.unread();
        return files.isEmpty() ? "" : " Not compared, since " + (files.size() == 1 ? "it" : "they") + " cannot be read: " + named(files) + ".";
    }

    private static String named(List<String> files) {
        return String.join(", ", files.subList(0, Math.min(NAMED, files.size())))
                + (files.size() > NAMED ? " and " + (files.size() - NAMED) + " more" : "");
    }
}
