package exergue.typeset;

import exergue.edition.Listing;
import exergue.edition.Part;
import exergue.model.Inline;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Concordances and indexes as what templates see; {@link Galley} adds how their lines are shared out in columns. */
final class ListingValues {

    private static final Inline BETWEEN = new Inline.Words("\u2002");

    private final Marks marks;
    private final Markup markup;

    ListingValues(Marks marks, Markup markup) {
        this.marks = marks;
        this.markup = markup;
    }

    void of(Part.Listings part, Map<String, Object> values) {
        values.put("note", BookValues.finished(markup.of(part.note())));
        values.put("continued", part.continued());
        values.put("listings", part.listings().stream().map(this::listing).toList());
    }

    private Map<String, Object> listing(Listing listing) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("anchor", marks.add(Marks.Kind.HEADING, listing.id(), "", ""));
        value.put("heading", BookValues.finished(markup.of(listing.heading())));
        value.put("plainHeading", Inline.plain(listing.heading()));
        value.put("shape", listing.heads().isPresent() ? "pairs" : "index");
        listing.heads().ifPresent(heads -> {
            value.put("left", heads.left());
            value.put("right", heads.right());
        });
        List<Map<String, Object>> lines = new ArrayList<>();
        for (Listing.Line line : listing.lines()) {
            lines.add(line(line, listing.heads().isPresent(), lines.size()));
        }
        value.put("lines", lines);
        return value;
    }

    private Map<String, Object> line(Listing.Line line, boolean pair, int at) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("at", at);
        value.put("gap", line.opensGroup());
        if (pair) {
            value.put("words", BookValues.finished(markup.of(line.words())));
            value.put("numbers", BookValues.finished(markup.of(line.numbers())));
        } else {
            List<Inline> runs = new ArrayList<>(line.words());
            runs.add(BETWEEN);
            runs.addAll(line.numbers());
            value.put("text", BookValues.finished(markup.of(runs)));
        }
        return value;
    }
}
