package exergue.typeset;

import exergue.edition.Book;
import exergue.edition.Part;
import exergue.finding.Finding;
import exergue.model.Inline;
import exergue.model.TitleMatter;
import exergue.model.Written;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateHTMLOutputModel;
import freemarker.template.TemplateModelException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** The book as what templates see: maps, lists, words and finished prose. */
final class BookValues {

    private static final int LEAST_SIGNS = 24;
    private static final int MOST_SIGNS = 50;

    private final Book book;
    private final Marks marks = new Marks();
    private final Map<String, String> kinds = new LinkedHashMap<>();
    private final Markup markup;
    private final ProseMarkup prose;
    private final EntryValues entries;
    private final PlateValues plates;
    private final ListingValues listings;
    private final ListValues lists;

    /** @param footnotes where notes stand */
    BookValues(Book book, Setting setting, FootnoteMarkup footnotes, Consumer<Finding> findings) {
        this.book = book;
        this.markup = new Markup(footnotes);
        this.prose = new ProseMarkup(marks, markup, Hyphens.of(book.language()), setting.source(), findings);
        Pictures pictures = new Pictures(setting, findings);
        this.entries = new EntryValues(marks, markup, prose, pictures, setting.rows());
        this.plates = new PlateValues(pictures);
        this.listings = new ListingValues(marks, markup);
        this.lists = new ListValues(markup);
    }

    /** Kind of each part, by its id. */
    Map<String, String> kinds() {
        return kinds;
    }

    Marks marks() {
        return marks;
    }

    /** What {@code book.ftlh} sees. */
    Map<String, Object> all() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("language", book.language());
        values.put("title", title(book.title()));
        List<Map<String, Object>> front = parts(book.front());
        Set<String> roman = marks.all().stream().map(Marks.Mark::id).collect(Collectors.toSet());
        List<Map<String, Object>> body = parts(book.body());
        body.addAll(parts(book.back()));
        values.put("front", front);
        values.put("body", body);
        lists.tellFolios(roman);
        List<Object> contents = new ArrayList<>();
        contents.addAll(lines(front, true));
        contents.addAll(lines(body, false));
        values.put("contents", contents);
        return values;
    }

    private Map<String, Object> title(TitleMatter title) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("title", title.title().value());
        values.put("subtitle", words(title.subtitle()));
        values.put("authors", title.authors().stream().map(Written::value).toList());
        values.put("place", words(title.place()));
        values.put("publisher", words(title.publisher()));
        values.put("year", words(title.year()));
        values.put("series", words(title.series()));
        values.put("notice", title.notice().map(n -> finished(markup.of(n.runs()))).orElse(finished("")));
        values.put("imprint", title.imprint().stream().map(line -> finished(markup.of(line.runs()))).toList());
        return values;
    }

    private static String words(Optional<Written<String>> text) {
        return text.map(Written::value).orElse("");
    }

    private List<Map<String, Object>> parts(List<Part> parts) {
        List<Map<String, Object>> values = new ArrayList<>();
        for (Part part : parts) {
            values.add(part(part));
        }
        return values;
    }

    private Map<String, Object> part(Part part) {
        Map<String, Object> values = new LinkedHashMap<>();
        String plain = Inline.plain(part.heading());
        String anchor = marks.add(Marks.Kind.PART, part.id(), "", plain);
        kinds.put(anchor, kind(part));
        values.put("kind", kind(part));
        values.put("anchor", anchor);
        values.put("heading", finished(markup.of(part.heading())));
        values.put("plainHeading", plain);
        if (part instanceof Part.Text text) {
            int before = marks.all().size();
            values.put("prose", finished(prose.of(text.blocks(), 1)));
            values.put("captions", marks.all().stream().skip(before).map(mark -> Map.of("anchor", mark.id())).toList());
            values.put("footnotes", markup.takeFootnotes());
        } else if (part instanceof Part.Lists listed) {
            values.put("lists", lists.of(listed));
        } else if (part instanceof Part.Entries listed) {
            values.put("columns", entries.columns(listed.blocks()));
            values.put("hasDies", entries.hasDies(listed.blocks()));
            values.put("diesWidth", entries.diesWidth(listed.blocks()).toPlainString());
            values.put("blocks", entries.of(listed.blocks()));
        } else if (part instanceof Part.Listings lists) {
            listings.of(lists, values);
        } else if (part instanceof Part.WorksCited cited) {
            values.put("works", cited.works().stream().map(this::work).toList());
            values.put("signWidth", signWidth(cited));
        } else if (part instanceof Part.Plates plated) {
            values.putAll(plates.of(plated));
        }
        return values;
    }

    private static String kind(Part part) {
        if (part instanceof Part.TitlePage) {
            return "title";
        } else if (part instanceof Part.Imprint) {
            return "imprint";
        } else if (part instanceof Part.Contents) {
            return "contents";
        } else if (part instanceof Part.Lists) {
            return "lists";
        } else if (part instanceof Part.Entries) {
            return "catalogue";
        } else if (part instanceof Part.Plates) {
            return "plates";
        } else if (part instanceof Part.Listings) {
            return "listings";
        }
        return part instanceof Part.WorksCited ? "works" : "text";
    }

    /** Of the column of signs, in mm: so wide that the longest stands on one line, within limits; 1.5 mm hold a letter. */
    private static int signWidth(Part.WorksCited cited) {
        int longest = cited.works().stream().mapToInt(work -> work.sign().length()).max().orElse(0);
        return Math.max(LEAST_SIGNS, Math.min(MOST_SIGNS, longest * 3 / 2 + 1));
    }

    private Map<String, Object> work(Part.WorkLine work) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("anchor", marks.add(Marks.Kind.WORK, work.id(), "", ""));
        values.put("sign", work.sign());
        values.put("full", finished(markup.of(work.full())));
        return values;
    }

    /** Lines of the contents: parts, and under the catalogue its mints and rulers. */
    private static List<Object> lines(List<Map<String, Object>> parts, boolean roman) {
        List<Object> lines = new ArrayList<>();
        for (Map<String, Object> part : parts) {
            if (!part.get("plainHeading").toString().isEmpty() && !"contents".equals(part.get("kind"))) {
                lines.add(line(1, part.get("heading"), part.get("plainHeading"), part.get("anchor"), roman));
            }
            if (part.get("listings") instanceof List<?> lists) {
                lists.forEach(list -> addListing((Map<?, ?>) list, roman, lines));
            }
            if (part.get("blocks") instanceof List<?> blocks) {
                for (Object block : blocks) {
                    addHeading((Map<?, ?>) block, roman, lines);
                }
            }
        }
        return lines;
    }

    /** Indexes; of concordances there would be too many. */
    private static void addListing(Map<?, ?> listing, boolean roman, List<Object> lines) {
        if ("index".equals(listing.get("shape"))) {
            lines.add(line(2, listing.get("heading"), listing.get("plainHeading"), listing.get("anchor"), roman));
        }
    }

    private static void addHeading(Map<?, ?> block, boolean roman, List<Object> lines) {
        if ("mint".equals(block.get("kind"))) {
            lines.add(line(2, block.get("name"), block.get("name"), block.get("anchor"), roman));
        } else if ("ruler".equals(block.get("kind"))) {
            lines.add(line(3, block.get("name"), block.get("name"), block.get("anchor"), roman));
        }
    }

    private static Map<String, Object> line(int level, Object heading, Object plain, Object anchor, boolean roman) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("level", level);
        line.put("heading", heading);
        line.put("plain", plain);
        line.put("anchor", anchor);
        line.put("roman", roman);
        return line;
    }

    /** Prose that is already escaped; templates print it as it is. */
    static TemplateHTMLOutputModel finished(String html) {
        try {
            return HTMLOutputFormat.INSTANCE.fromMarkup(html);
        } catch (TemplateModelException e) {
            throw new IllegalStateException("text can always be wrapped", e);
        }
    }
}
