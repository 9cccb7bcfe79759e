package exergue.exchange.list;

import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.finding.Place;
import exergue.model.Catalogue;
import exergue.model.Written;
import exergue.source.list.ColumnContent;
import exergue.source.list.ListCodes;
import exergue.source.list.ListColumn;
import exergue.source.list.ListPlan;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The columns of a sheet that the file beside it speaks of; and everything that does not fit between the two. */
final class ColumnsFound {

    private final Sheet sheet;
    private final ListPlan plan;
    private final Catalogue catalogue;
    private final Names names;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Column> columns = new ArrayList<>();

    private ColumnsFound(Sheet sheet, ListPlan plan, Catalogue catalogue) {
        this.sheet = sheet;
        this.plan = plan;
        this.catalogue = catalogue;
        this.names = new Names(catalogue);
    }

    static ColumnsFound of(Sheet sheet, ListPlan plan, Catalogue catalogue) {
        ColumnsFound found = new ColumnsFound(sheet, plan, catalogue);
        found.look();
        return found;
    }

    /** In the order of the sheet. */
    List<Column> columns() {
        return columns;
    }

    List<Finding> findings() {
        return findings;
    }

    private void look() {
        plan.columns().forEach((heading, said) -> {
            if (!sheet.headings().contains(heading)) {
                notThere(heading, said.place(), "columns." + heading);
            }
        });
        for (int index = 0; index < sheet.headings().size(); index++) {
            String heading = sheet.headings().get(index);
            ListColumn said = plan.columns().get(heading);
            if (said != null) {
                columns.add(new Column(index, heading, said));
            } else if (sheet.filled(index) > 0 && !isSpokenOf(heading)) {
                unclaimed(heading, index);
            }
        }
        columns.forEach(this::lookAt);
        plan.everyRow().forEach((word, value) -> ColumnContent.of(word).ifPresent(content -> lookAt(content, value)));
        hands();
        twoOfOne();
        ids();
        type();
    }

    /** True for a column that another column speaks of. */
    private boolean isSpokenOf(String heading) {
        return plan.columns().values().stream().flatMap(said -> Stream.of(said.hand().byIn(), said.hand().secondIn())).flatMap(Optional::stream)
                .anyMatch(in -> in.value().equals(heading));
    }

    private void notThere(String heading, Place place, String path) {
        findings.add(Finding.of(ListCodes.HEADING_NOT_THERE, place, path, "The list has no heading “" + heading + "”.",
                NearMiss.question(heading, sheet.headings())
                        + "Its headings, in row " + sheet.headingsRow() + ", are “" + String.join("”, “", sheet.headings()) + "”."));
    }

    private void unclaimed(String heading, int index) {
        long filled = sheet.filled(index);
        findings.add(Finding.of(ListCodes.COLUMN_UNCLAIMED, sheet.headed().cell(index).place(), "", "Column " + SheetCell.letters(index) + ", “" + heading + "”, goes nowhere: "
                        + (filled == 1 ? "one row has" : filled + " rows have") + " something in it.",
                NearMiss.of(heading, plan.columns().keySet().stream().filter(one -> !sheet.headings().contains(one)).toList())
                        .map(near -> "Is it the one that the file calls “" + near + "”? ").orElse("")
                        + "Say what it holds, such as note; or left out, if it is not wanted."));
    }

    private void lookAt(Column column) {
        Stream.of(column.said().hand().byIn(), column.said().hand().secondIn()).flatMap(Optional::stream)
                .filter(in -> !sheet.headings().contains(in.value())).forEach(in -> notThere(in.value(), in.place(), "columns." + column.heading()));
        column.said().text().words().values().forEach(name -> lookAt(column.holds(), name));
        boolean cites = column.holds() == ColumnContent.REFERENCE || column.holds() == ColumnContent.TYPE_REFERENCE;
        Optional<Written<String>> work = column.said().cited().work();
        if (cites && work.isEmpty()) {
            open(column.said().place(), "The column “" + column.heading() + "” has numbers in a work, but it is not said in which.",
                    "Write it: work: and the id of one in works.yaml, works.json or works.bib.");
        }
        work.filter(id -> !catalogue.works().containsKey(id.value())).ifPresent(id -> unknown(id, "work that the catalogue cites",
                catalogue.works().keySet()));
        if (column.holds().kind().isPresent()) {
            Optional<Written<String>> by = column.said().hand().by().or(plan::by);
            by.filter(id -> !catalogue.conventions().containsKey(id.value())).ifPresent(id -> unknown(id, "measuring convention of conventions.yaml",
                    catalogue.conventions().keySet()));
        }
    }

    /** One finding for all columns, since one line mends them all. */
    private void hands() {
        List<Column> nobodys = columns.stream().filter(column -> column.holds().kind().isPresent()
                && column.said().hand().by().or(plan::by).or(column.said().hand()::byIn).isEmpty()).toList();
        if (!nobodys.isEmpty()) {
            boolean one = nobodys.size() == 1;
            open(nobodys.get(0).said().place(), (one ? "The column “" : "The columns “") + String.join("”, “", nobodys.stream().map(Column::heading).toList())
                            + (one ? "” has" : "” have") + " readings, but it is not said who took them.",
                    "Write by: and the id of a convention" + (catalogue.conventions().isEmpty() ? " that you declare in conventions.yaml."
                            : ", at the left margin for the whole list or under the column: " + String.join(", ", catalogue.conventions().keySet())
                            + "; or of another that you declare in conventions.yaml."));
        }
    }

    /** What is to be the name of something in the catalogue must be one. */
    private void lookAt(ColumnContent content, Written<String> name) {
        Collection<String> known = names.of(content);
        if (Names.HAS.contains(content) && names.id(content, name.value()).isEmpty()) {
            unknown(name, content.word() + " that the catalogue knows", known);
        }
    }

    private void unknown(Written<String> id, String what, Collection<String> known) {
        findings.add(Finding.of(ListCodes.UNKNOWN_WORD, id.place(), "", "“" + id.value() + "” is no " + what + ".",
                NearMiss.question(id.value(), known)
                        + (known.isEmpty() ? "There is none yet." : "There are “" + String.join("”, “", known) + "”.")));
    }

    /** Two columns of which only one can be meant. */
    private void twoOfOne() {
        Map<List<String>, Column> seen = new HashMap<>();
        for (Column column : columns) {
            boolean reading = column.holds().kind().isPresent();
            String whose = reading ? column.said().hand().byIn().or(() -> column.said().hand().by()).or(plan::by).map(Written::value).orElse("") : "";
            String which = column.said().cited().work().map(Written::value).orElse("");
            Column before = column.holds().maySeveral() ? null : seen.putIfAbsent(List.of(column.holds().word(), whose, which), column);
            if (before != null) {
                open(column.said().place(), "Two columns hold the " + column.holds().word() + ": “" + before.heading() + "” and “"
                        + column.heading() + "”.", reading ? "If two people measured, say under each who: by: …; or leave one out: left out."
                        : "Leave one of them out: left out.");
            }
        }
    }

    private void ids() {
        if (holds(ColumnContent.ID)) {
            return;
        }
        if (plan.ids().isEmpty()) {
            open(plan.place(), "It is not said what the ids of new coins are made of.",
                    "Write it: ids: and a pattern with what columns hold in braces, such as ids: 'tm-{inventory number}'.");
            return;
        }
        Written<String> ids = plan.ids().get();
        List<String> parts = new IdPattern(ids.value()).parts();
        if (parts.isEmpty()) {
            open(ids.place(), "The pattern “" + ids.value() + "” gives every coin the same id.",
                    "Put something in braces that differs from coin to coin: 'tm-{inventory number}'.");
        }
        for (String part : new HashSet<>(parts)) {
            boolean there = ColumnContent.of(part).filter(content -> holds(content) || plan.everyRow().containsKey(content.word())).isPresent();
            if (!there) {
                open(ids.place(), "No column holds what the ids are made of: “" + part + "”.",
                        NearMiss.question(part, ColumnContent.words())
                                + "In braces stands what a column holds, in its words, such as inventory number.");
            }
        }
    }

    private void type() {
        boolean told = holds(ColumnContent.TYPE) || plan.everyRow().containsKey(ColumnContent.TYPE.word())
                || columns.stream().anyMatch(column -> column.holds().tellsType());
        if (!told) {
            open(plan.place(), "Nothing in the list says which type a coin is of.", "Say which column holds the type, or the mint, ruler, "
                    + "denomination, metal or type reference by which it is known; or, if all are of one: every-row: {type: …}.");
        }
    }

    private boolean holds(ColumnContent content) {
        return columns.stream().anyMatch(column -> column.holds() == content);
    }

    private void open(Place place, String what, String remedy) {
        findings.add(Finding.of(ListCodes.PLAN, place, "", what, remedy));
    }
}
