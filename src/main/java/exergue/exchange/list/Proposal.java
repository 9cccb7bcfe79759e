package exergue.exchange.list;

import exergue.model.Catalogue;
import exergue.source.list.ColumnContent;
import exergue.source.list.ListPlan;
import exergue.source.text.Notebook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The file beside a list as it could be, from the words over its columns, for the author to look over. What only the author can say
 * stands in comments; nothing is guessed from what the cells hold, but for the decimal mark and rows of sums.
 */
public final class Proposal {

    private final Sheet sheet;
    private final String list;
    private final Catalogue catalogue;
    private final Map<String, ColumnContent> known = new LinkedHashMap<>();
    private final Map<String, ColumnContent> second = new LinkedHashMap<>();
    private final StringBuilder yaml = new StringBuilder();

    private Proposal(Sheet sheet, String list, Catalogue catalogue) {
        this.sheet = sheet;
        this.list = list;
        this.catalogue = catalogue;
        Set<ColumnContent> taken = new LinkedHashSet<>();
        for (String heading : sheet.headings()) {
            HeadingWords.content(heading).ifPresent(content ->
                    (content.maySeveral() || taken.add(content) ? known : second).put(heading, content));
        }
    }

    /** @param text of the file; @param known how many headings are of common words; @param headings how many there are */
    public record Proposed(String text, int known, int headings) { }

    /** @return the file; empty where the list cannot be read, which is in the notebook then */
    public static Optional<Proposed> of(NamedBytes list, Catalogue catalogue, Notebook notebook) {
        ListPlan.Layout unsaid = new ListPlan.Layout(Optional.empty(), Optional.empty(), Optional.empty(), List.of());
        return SheetReader.read(list.bytes(), list.path(), unsaid, notebook).map(sheet -> {
            Proposal proposal = new Proposal(sheet, list.name(), catalogue);
            EncodingTaken.in(sheet, list.path(), proposal.shown()).ifPresent(notebook::add);
            return new Proposed(proposal.text(), proposal.known.size(), sheet.headings().size());
        });
    }

    /** The list without what stands in columns that may name where a coin was found. */
    private String shown() {
        List<Integer> places = IntStream.range(0, sheet.headings().size()).filter(column -> known.get(sheet.headings().get(column)) == ColumnContent.FIND_SPOT
                || HeadingWords.TWO_MEANINGS.contains(HeadingWords.plain(sheet.headings().get(column)))).boxed().toList();
        return ExactPlaces.of(catalogue, sheet.rows().stream().flatMap(row -> places.stream().map(column -> row.cell(column).text())).toList())
                .hidden(Hidden.in(sheet, places));
    }

    private String text() {
        line("# How the list " + list + " is read. Look over every line: the headings were only compared with words that are common");
        line("# in the trade, and what only you can say stands after a #. When it is right, run the command enter again.");
        line("# Found: " + sheet.how() + ", headings in row " + sheet.headingsRow() + ".");
        if (sheet.encodingTaken()) {
            line("# encoding: windows-1252");
        }
        line("");
        hands();
        ids();
        everyRow();
        signs();
        List<String> sums = sheet.rows().stream().filter(row -> RowReader.looksLikeNoCoin(row, sheet)).map(row -> row.first().orElseThrow().text().replaceAll("\\s+", " ")).distinct().toList();
        if (!sums.isEmpty()) {
            line("rows-left-out: [" + String.join(", ", sums.stream().map(EntryNode::plainOrQuoted).toList()) + "]");
            line("");
        }
        line("columns:");
        for (int column = 0; column < sheet.headings().size(); column++) {
            column(sheet.headings().get(column), column);
        }
        return yaml.toString();
    }

    private void line(String text) {
        yaml.append(text).append('\n');
    }

    private void hands() {
        List<Integer> readings = readings();
        if (readings.isEmpty()) {
            return;
        }
        line("# Who measured, with what and how: the id of a convention of conventions.yaml"
                + (catalogue.conventions().isEmpty() ? ", declared there first." : " (" + String.join(", ", catalogue.conventions().keySet()) + ")."));
        line("# by: …");
        if (anyCell(readings, ".*\\d,\\d.*") && !anyCell(readings, ".*\\d\\.\\d.*")) {
            line("decimal-mark: comma");
        }
        line("");
    }

    private List<Integer> readings() {
        List<Integer> readings = new ArrayList<>();
        for (int column = 0; column < sheet.headings().size(); column++) {
            ColumnContent content = known.get(sheet.headings().get(column));
            if (content != null && content.kind().isPresent()) {
                readings.add(column);
            }
        }
        return readings;
    }

    private boolean anyCell(List<Integer> columns, String pattern) {
        return sheet.rows().stream().anyMatch(row -> columns.stream().anyMatch(column -> row.cell(column).text().matches(pattern)));
    }

    private void ids() {
        String stem = IdPattern.slug(list.replaceAll("\\.[^.]*$", ""));
        boolean numbered = known.containsValue(ColumnContent.INVENTORY_NUMBER);
        line("# What the ids of new coins are made of: something that stays, in braces what a column holds.");
        line((numbered ? "" : "# ") + "ids: '" + (stem.isEmpty() ? "coin" : stem) + "-{inventory number}'");
        line("");
    }

    private void everyRow() {
        List<String> open = new ArrayList<>();
        if (!known.containsValue(ColumnContent.COLLECTION)) {
            open.add("collection: …");
        }
        if (!known.containsValue(ColumnContent.TYPE) && known.values().stream().noneMatch(ColumnContent::tellsType)) {
            open.add("type: …");
        }
        if (!open.isEmpty()) {
            line("# What holds for every coin of the list, where its row says nothing else: ids of collections.yaml and of types/.");
            line("# every-row: {" + String.join(", ", open) + "}");
            line("");
        }
    }

    private void signs() {
        Map<String, List<Integer>> rows = new LinkedHashMap<>();
        for (int column : readings()) {
            for (SheetRow row : sheet.rows()) {
                if (!RowReader.looksLikeNoCoin(row, sheet) && CellReader.isSign(known.get(sheet.headings().get(column)), row.cell(column).text())) {
                    rows.computeIfAbsent(row.cell(column).isEmpty() ? ListPlan.EMPTY : row.cell(column).text(), key -> new ArrayList<>())
                            .add(row.number());
                }
            }
        }
        if (!rows.isEmpty()) {
            line("# What stands where there is no figure. Could it be known (missing), is there none (not applicable), or can the record");
            line("# not be read (illegible)? Or is nothing to be said of it (left out)?");
            line("# signs:");
            rows.forEach((sign, where) -> line("#   " + EntryNode.plainOrQuoted(sign) + (CellReader.isOfSpreadsheet(sign) ? ": …   # made by the spreadsheet? mend it there; " : ": 'missing: not recorded in the list'   # ")
                    + RowFindings.rows(where.stream().distinct().toList())));
            line("");
        }
    }

    private static String holds(ColumnContent content, String heading, String more) {
        Optional<String> unit = content.kind().isPresent() ? HeadingWords.unit(heading) : Optional.empty();
        String of = unit.map(one -> ", unit: " + EntryNode.plainOrQuoted(one)).orElse("") + more;
        return of.isEmpty() ? content.word() : "{holds: " + content.word() + of + "}";
    }

    /** A second column of what a coin has one of; of readings, a second hand can have taken them. */
    private static String second(ColumnContent content, String heading) {
        return !content.kind().isPresent() ? "…   # another " + content.word() + "? What it holds, or left out"
                : holds(content, heading, ", by: …") + "   # whose? Or left out"
                + (content == ColumnContent.DIAMETER ? "; or the other way across: second-in: under the first" : "");
    }

    private void column(String heading, int index) {
        ColumnContent content = known.get(heading);
        String key = EntryNode.plainOrQuoted(heading);
        if (content != null) {
            line("  " + key + ": " + holds(content, heading, ""));
        } else if (sheet.filled(index) > 0) {
            String plain = HeadingWords.plain(heading);
            line("  # " + key + ": " + (second.containsKey(heading) ? second(second.get(heading), heading)
                    : HeadingWords.CITES.contains(plain) ? "{holds: reference, work: …}"
                    : HeadingWords.TWO_MEANINGS.contains(plain) ? "…   # earlier owners: provenance; or where it was found: find-spot"
                    : "…   # what it holds, or left out"));
        }
    }
}
