package exergue.typeset;

import exergue.edition.Alone;
import exergue.edition.Anchors;
import exergue.edition.EntryBlock;
import exergue.edition.Specimen;
import exergue.measure.Kind;
import exergue.model.HouseStyle.Rows;
import exergue.model.Inline;
import exergue.model.Prose;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The catalogue part as what templates see: headings, entries, and their specimens as cells of aligned rows. */
final class EntryValues {

    private static final int PART_LEVEL = 1;
    /** No more letters than these fit one line beside the figures of a row, whatever columns there are. */
    private static final int ONE_LINE = 75;
    /** So many letters mostly do. */
    private static final int USUAL_LINE = 60;

    /** A figure or a capital of the rows' size is hardly ever wider, in mm. */
    private static final BigDecimal DIES_LETTER = new BigDecimal("1.6");
    private static final BigDecimal DIES_GAP = new BigDecimal("2.5");
    private static final BigDecimal DIES_LEAST = new BigDecimal("17.5");
    /** Beyond this the remarks have no room; the page is then said to be too narrow for them. */
    private static final BigDecimal DIES_MOST = new BigDecimal("28");

    private final Marks marks;
    private final Markup markup;
    private final ProseMarkup prose;
    private final Pictures pictures;
    private final Rows rows;

    EntryValues(Marks marks, Markup markup, ProseMarkup prose, Pictures pictures, Rows rows) {
        this.marks = marks;
        this.markup = markup;
        this.prose = prose;
        this.pictures = pictures;
        this.rows = rows;
    }

    /** Kinds of reading that some specimen has, in the order of the measurement line: one column each. */
    List<String> columns(List<EntryBlock> blocks) {
        return kinds(blocks).stream().map(Kind::word).toList();
    }

    /** Whether any coin's dies are known, so that their column is wanted. */
    boolean hasDies(List<EntryBlock> blocks) {
        return blocks.stream().anyMatch(block -> block instanceof EntryBlock.Entry entry
                && entry.specimens().stream().anyMatch(coin -> !coin.dies().isEmpty()));
    }

    /** Of the column of dies, in mm: so wide that the longest pair of numbers stands on one line. */
    BigDecimal diesWidth(List<EntryBlock> blocks) {
        int longest = 0;
        for (EntryBlock block : blocks) {
            if (block instanceof EntryBlock.Entry entry) {
                longest = entry.specimens().stream().mapToInt(coin -> coin.dies().length()).reduce(longest, Math::max);
            }
        }
        return DIES_LETTER.multiply(BigDecimal.valueOf(longest)).add(DIES_GAP).max(DIES_LEAST).min(DIES_MOST);
    }

    private static Set<Kind> kinds(List<EntryBlock> blocks) {
        Set<Kind> kinds = new LinkedHashSet<>();
        for (EntryBlock block : blocks) {
            if (block instanceof EntryBlock.Entry entry) {
                entry.specimens().forEach(coin -> coin.cells().forEach(cell -> kinds.add(cell.kind())));
            }
        }
        return kinds;
    }

    List<Map<String, Object>> of(List<EntryBlock> blocks) {
        List<Map<String, Object>> values = new ArrayList<>();
        List<Kind> columns = List.copyOf(kinds(blocks));
        int level = PART_LEVEL;
        for (EntryBlock block : blocks) {
            Map<String, Object> value = new LinkedHashMap<>();
            if (block instanceof EntryBlock.MintHeading mint) {
                level = 2;
                heading(value, "mint", mint.id(), mint.name(), level);
                value.put("dates", mint.dates().orElse(""));
                value.put("note", BookValues.finished(markup.of(mint.note())));
            } else if (block instanceof EntryBlock.RulerHeading ruler) {
                level = Math.min(level + 1, 3);
                heading(value, "ruler", ruler.id(), ruler.name(), level);
                value.put("dates", ruler.dates().orElse(""));
                value.put("note", BookValues.finished(markup.of(ruler.note())));
            } else if (block instanceof EntryBlock.IssueHeading issue) {
                heading(value, "issue", issue.id(), issue.name(), Math.min(level + 1, 4));
            } else if (block instanceof EntryBlock.Entry entry) {
                entry(value, entry, columns);
            }
            values.add(value);
        }
        return values;
    }

    private void heading(Map<String, Object> value, String kind, String id, String name, int level) {
        value.put("kind", kind);
        value.put("anchor", marks.add(Marks.Kind.HEADING, id, "", ""));
        value.put("name", name);
        value.put("level", level);
    }

    private void entry(Map<String, Object> value, EntryBlock.Entry entry, List<Kind> columns) {
        value.put("kind", "entry");
        value.put("anchor", marks.addEntry(entry.id(), entry.runningHead(),
                new Marks.RunsOn(entry.numbers(), entry.continued())));
        value.put("numbers", entry.numbers());
        value.put("firstLine", entry.firstLine());
        value.put("sides", entry.sides().stream().map(this::side).toList());
        value.put("references", entry.references().stream().map(EntryValues::reference).toList());
        value.put("running", rows == Rows.RUNNING);
        Alignment alignment = Alignment.of(entry.specimens(), columns);
        List<Map<String, Object>> specimens = new ArrayList<>();
        for (Specimen coin : entry.specimens()) {
            specimens.add(specimen(coin, alignment, entry.runningHead()));
        }
        value.put("specimens", specimens);
        value.put("pictures", specimens.stream().filter(coin -> coin.containsKey("picture") && "".equals(coin.get("plate")))
                .toList());
        value.put("notes", BookValues.finished(prose.of(entry.notes(), 4)));
    }

    private Map<String, Object> side(EntryBlock.SideText side) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("label", side.label());
        value.put("legend", side.legend().orElse(""));
        value.put("description", BookValues.finished(markup.of(side.description())));
        return value;
    }

    private static Map<String, Object> reference(EntryBlock.ReferenceText reference) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("relation", reference.relation());
        value.put("sign", reference.sign());
        value.put("number", reference.number());
        return value;
    }

    private Map<String, Object> specimen(Specimen coin, Alignment alignment, String head) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("anchor", marks.add(Marks.Kind.COIN, coin.id(), coin.number(), head));
        value.put("number", coin.number());
        value.put("cells", alignment.cells(coin));
        value.put("members", coin.cells().stream().map(Alignment::member).filter(m -> !m.isEmpty()).toList());
        value.put("dies", coin.dies());
        value.put("more", !coin.text().isEmpty());
        value.put("tall", Inline.plain(coin.text()).length() > ONE_LINE || !coin.notes().isEmpty());
        value.put("lines", lines(coin));
        value.put("text", BookValues.finished(markup.of(coin.text())));
        value.put("notes", BookValues.finished(prose.of(coin.notes(), 4)));
        value.put("plate", coin.plate());
        value.put("shown", Anchors.onPlate(coin.id()));
        coin.picture().flatMap(picture -> pictures.of(coin.id(), coin.number(), picture))
                .ifPresent(p -> value.put("picture", p));
        value.put("alone", alone(coin.alone()));
        return value;
    }

    /** About how many lines a row takes. */
    private static int lines(Specimen coin) {
        int lines = Math.max(1, lines(Inline.plain(coin.text())));
        for (Prose note : coin.notes()) {
            lines += note instanceof Prose.Paragraph paragraph ? lines(Inline.plain(paragraph.runs())) : 1;
        }
        return lines;
    }

    private static int lines(String text) {
        return (text.length() + USUAL_LINE - 1) / USUAL_LINE;
    }

    private Map<String, Object> alone(Alone alone) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("found", alone.found());
        value.put("kept", alone.kept());
        value.put("provenance", alone.provenance());
        value.put("likeFirst", alone.likeFirst());
        value.put("sides", alone.sides().stream().map(this::side).toList());
        value.put("differs", BookValues.finished(markup.of(alone.differs())));
        value.put("condition", BookValues.finished(markup.of(alone.condition())));
        value.put("references", alone.references().stream().map(EntryValues::reference).toList());
        value.put("ownReferences", alone.ownReferences().stream().map(EntryValues::reference).toList());
        return value;
    }
}
