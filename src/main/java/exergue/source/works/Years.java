package exergue.source.works;

import exergue.model.WorkItem;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates of publication from words: 1931, 1931-05, 1931/1934, or whatever else it says. */
final class Years {

    private static final Pattern DATE = Pattern.compile("([0-9]{4})(?:-([0-9]{1,2}))?(?:-([0-9]{1,2}))?");
    private static final Pattern SPAN = Pattern.compile("([0-9]{4}[-0-9]*)/([0-9]{4}[-0-9]*)|([0-9]{4})\\s*[\u2013-]{1,2}\\s*([0-9]{4})");

    private Years() { }

    static WorkItem.Date of(String words) {
        String text = words.strip();
        Matcher span = SPAN.matcher(text);
        if (span.matches()) {
            List<Integer> from = parts(span.group(1) == null ? span.group(3) : span.group(1));
            List<Integer> to = parts(span.group(2) == null ? span.group(4) : span.group(2));
            return from.isEmpty() || to.isEmpty() ? literal(text) : new WorkItem.Date(List.of(from, to), "", false);
        }
        List<Integer> parts = parts(text);
        return parts.isEmpty() ? literal(text) : new WorkItem.Date(List.of(parts), "", false);
    }

    private static WorkItem.Date literal(String text) {
        return new WorkItem.Date(List.of(), text, false);
    }

    private static List<Integer> parts(String text) {
        Matcher date = DATE.matcher(text);
        List<Integer> parts = new ArrayList<>();
        if (date.matches()) {
            for (int i = 1; i <= 3 && date.group(i) != null; i++) {
                parts.add(Integer.valueOf(date.group(i)));
            }
        }
        return parts;
    }
}
