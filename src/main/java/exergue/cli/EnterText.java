package exergue.cli;

import exergue.exchange.list.Entered;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What came of a list, in words. */
final class EnterText {

    private static final int FIRST = 2;

    private EnterText() { }

    /**
     * How the list was read, and what was or would be made of it; ends where the count of findings follows.
     *
     * @param look  whether it was only to be looked at
     * @param sound whether it could be entered
     */
    static String of(Entered entered, String list, String source, boolean look, boolean sound) {
        if (entered.look().isEmpty()) {
            return list + ": nothing was entered; ";
        }
        return read(list, entered.look().get()) + "\n" + source + ": " + made(entered, entered.look().get(), look, sound) + "; ";
    }

    private static String read(String list, Entered.Look look) {
        List<String> unread = new ArrayList<>();
        if (look.above() > 0) {
            unread.add(HowMany.count(look.above(), "row") + " above the headings not read");
        }
        if (look.leftOut() > 0) {
            unread.add(HowMany.count(look.leftOut(), "row") + " left out");
        }
        return list + ": " + look.how() + ", headings in row " + look.headingsRow() + ", " + HowMany.count(look.coins(), "coin")
                + (unread.isEmpty() ? "" : "; " + String.join(", ", unread));
    }

    private static String made(Entered entered, Entered.Look look, boolean only, boolean sound) {
        if (!sound) {
            return "nothing was written, since there are errors";
        }
        List<String> parts = new ArrayList<>();
        String would = only ? " to be " : " ";
        if (entered.made().isEmpty() && entered.changed().isEmpty()) {
            parts.add(HowMany.count(look.coins(), "coin") + ", all there already");
        } else {
            parts.add(HowMany.count(entered.made().size(), "coin") + would + "entered");
            if (look.there() > 0) {
                parts.add(look.there() + " there already");
            }
        }
        if (!entered.changed().isEmpty()) {
            parts.add("figures" + would + "added to " + HowMany.count(entered.changed().size(), "entry"));
        }
        if (look.without() > 0) {
            parts.add("--add-figures adds the list’s figures to " + look.without() + " of these");
        }
        return String.join(", ", parts) + (only ? "; nothing was written" : "");
    }

    /** The first files that would be written, whole. */
    static String firstEntries(Entered entered) {
        return entered.files().entrySet().stream().limit(FIRST).map(EnterText::shown).collect(Collectors.joining());
    }

    private static String shown(Map.Entry<String, byte[]> file) {
        return file.getKey() + "\n" + new String(file.getValue(), StandardCharsets.UTF_8).indent(4) + "\n";
    }
}
