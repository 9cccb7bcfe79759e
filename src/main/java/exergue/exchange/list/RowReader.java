package exergue.exchange.list;

import exergue.exchange.list.RowFindings.Spot;
import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.model.Catalogue;
import exergue.model.Written;
import exergue.source.list.ColumnContent;
import exergue.source.list.ListCodes;
import exergue.source.list.ListPlan;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Rows to drafts of entries. */
final class RowReader {

    /** How rows begin that are no coins. Common practice, no source. */
    private static final Set<String> SUMS = Set.of("total", "totals", "sum", "mean", "average", "totaux", "somme", "moyenne",
            "effectif", "summe", "gesamt", "insgesamt", "mittel", "mittelwert", "durchschnitt", "anzahl", "totale", "somma", "media");

    private final Catalogue catalogue;
    private final ListPlan plan;
    private final Sheet sheet;
    private final Map<String, Column> byHeading = new LinkedHashMap<>();
    private final RowFindings findings = new RowFindings();
    private final CellReader cells;
    private final ReadingCells readings;
    private final EntryFields fields;
    private final ExactPlaces places;
    private int leftOut;

    /** @param places that no words may name */
    RowReader(Catalogue catalogue, ListPlan plan, Sheet sheet, List<Column> columns, ExactPlaces places) {
        this.catalogue = catalogue;
        this.plan = plan;
        this.sheet = sheet;
        columns.forEach(column -> byHeading.put(column.heading(), column));
        this.cells = new CellReader(plan, columns, sheet.headings());
        this.readings = new ReadingCells(plan, findings);
        this.places = places;
        this.fields = new EntryFields(catalogue, new Names(catalogue), findings);
    }

    /** One for each row that is a coin and has an id. */
    List<Draft> drafts() {
        List<Draft> drafts = new ArrayList<>();
        for (SheetRow row : sheet.rows()) {
            if (isLeftOut(row)) {
                leftOut++;
            } else if (looksLikeNoCoin(row, sheet)) {
                String first = row.first().orElseThrow().text().replaceAll("[\\s:.=]+$", "");
                findings.add(ListCodes.LIKE_A_SUM, Spot.of(row), "This row begins with “" + first + "” and looks like no coin.",
                        "Leave it out with rows-left-out: [" + EntryNode.plainOrQuoted(first) + "]; or delete it from the list.");
            } else {
                draft(row).ifPresent(drafts::add);
            }
        }
        return drafts;
    }

    int leftOut() {
        return leftOut;
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>(findings.all());
        all.addAll(cells.unanswered());
        return all;
    }

    private boolean isLeftOut(SheetRow row) {
        String first = row.first().orElseThrow().text();
        return plan.layout().rowsLeftOut().stream().anyMatch(begin -> Names.folded(first).startsWith(Names.folded(begin.value())));
    }

    /** A sum; or a heading in between, which is one cell of words in a sheet of many columns. */
    static boolean looksLikeNoCoin(SheetRow row, Sheet sheet) {
        String first = row.first().orElseThrow().text();
        return SUMS.contains(first.toLowerCase(Locale.ROOT).replaceAll("[\\s:.=]+$", ""))
                || row.filled() == 1 && sheet.headings().size() > 2 && first.codePoints().noneMatch(Character::isDigit);
    }

    private Optional<Draft> draft(SheetRow row) {
        row.cells().stream().skip(sheet.headings().size()).filter(cell -> !cell.isEmpty()).findFirst().ifPresent(cell ->
                findings.add(ListCodes.BEYOND_HEADINGS, Spot.of(row), "cells", "The row has something in column "
                        + SheetCell.letters(cell.column()) + ", where there is no heading.",
                        "Perhaps a cell before it has the sign in it that parts the cells: put that cell in quotation marks. Or give the "
                                + "column a heading."));
        Map<ColumnContent, List<Taken>> taken = cells.row(row);
        Map<String, Map<Kind, Draft.Figure>> hands = hands(row, taken);
        List<Draft.Field> said = fields.of(row, taken);
        boolean exact = namesPlace(taken);
        boolean found = taken.containsKey(ColumnContent.FIND_CONTEXT) || taken.containsKey(ColumnContent.FIND_NUMBER);
        if (found && !taken.containsKey(ColumnContent.FIND_SPOT)) {
            findings.add(ListCodes.PLAN, Spot.of(row), "find", "The row says something of a find, but not where it was made.",
                    "Fill the cell of the find-spot; or say what holds for all of them: every-row: {find-spot: …}.");
        }
        boolean numbered = taken.containsKey(ColumnContent.INVENTORY_NUMBER) && !taken.containsKey(ColumnContent.COLLECTION);
        if (numbered) {
            findings.add(ListCodes.PLAN, Spot.of(row), "collection", "The row has an inventory number, but nothing says of which collection.",
                    "Say it for all of them: every-row: {collection: …}, with an id of collections.yaml.");
        }
        return id(row, taken).filter(id -> !exact).map(id -> new Draft(row, id, hands, said)); // nor is it quoted where entries are compared
    }

    /** Whether words that would be written name the very place of a find, which has been said then; ids may have the same words in them. */
    private boolean namesPlace(Map<ColumnContent, List<Taken>> taken) {
        List<Taken> exact = taken.entrySet().stream().filter(entry -> !Names.HAS.contains(entry.getKey()) && !entry.getKey().tellsType())
                .flatMap(entry -> entry.getValue().stream()).filter(one -> places.namedIn(one.text())).toList();
        exact.forEach(one -> findings.add(ListCodes.EXACT_PLACE, one.spot(), "place", "The words name the very place of a find.",
                "Take the place out of them, or leave the column out; what is exact belongs under exact: in find-spots.yaml, where it is held back."));
        return !exact.isEmpty();
    }

    private Optional<String> id(SheetRow row, Map<ColumnContent, List<Taken>> taken) {
        Optional<String> id = taken.containsKey(ColumnContent.ID) ? Optional.of(taken.get(ColumnContent.ID).get(0).text())
                : plan.ids().flatMap(pattern -> new IdPattern(pattern.value()).of(taken));
        boolean sound = id.filter(text -> text.equals(IdPattern.slug(text))).isPresent();
        if (!sound) {
            List<String> parts = plan.ids().map(pattern -> new IdPattern(pattern.value()).parts()).orElse(List.of(ColumnContent.ID.word()));
            findings.add(ListCodes.NO_ID, Spot.of(row), id.isPresent() ? "“" + id.get() + "” cannot be the id of a coin."
                            : "There is no " + String.join(" or no ", parts) + " in this row, so the coin has no id.",
                    id.isPresent() ? "Ids have small letters a to z, digits, and hyphens or full stops between them: “" + IdPattern.slug(id.get())
                            + "”." : "Write one into the list; it must be something that stays, not the number of the row.");
        }
        return sound ? id : Optional.empty();
    }

    /** Readings by convention; that of the list is first. */
    private Map<String, Map<Kind, Draft.Figure>> hands(SheetRow row, Map<ColumnContent, List<Taken>> taken) {
        Map<String, Map<Kind, Draft.Figure>> hands = new LinkedHashMap<>();
        plan.by().ifPresent(by -> hands.put(by.value(), new EnumMap<>(Kind.class)));
        taken.forEach((content, all) -> content.kind().ifPresent(kind -> all.forEach(one -> convention(row, one).ifPresent(convention ->
                readings.text(kind, one, convention).ifPresent(text -> keep(new Draft.Figure(text, one.spot()), kind,
                        hands.computeIfAbsent(convention.id(), key -> new EnumMap<>(Kind.class)), convention))))));
        hands.values().removeIf(Map::isEmpty);
        return hands;
    }

    private void keep(Draft.Figure figure, Kind kind, Map<Kind, Draft.Figure> hand, Convention convention) {
        Draft.Figure before = hand.putIfAbsent(kind, figure);
        if (before != null && !before.text().equals(figure.text())) {
            findings.add(ListCodes.PLAN, figure.spot(), "two of " + convention.id(), "Of this coin the row has two figures for the " + kind.word()
                    + " by “" + convention.id() + "”; the other is under “" + before.spot().heading() + "”.",
                    "If two people measured, say under each column, or in the row, who; or leave one column out: left out.");
        }
    }

    private Optional<Convention> convention(SheetRow row, Taken one) {
        Optional<String> inRow = one.said().hand().byIn().flatMap(heading -> cells.plain(byHeading.getOrDefault(heading.value(),
                new Column(sheet.headings().indexOf(heading.value()), heading.value(), one.said())), row));
        Optional<String> id = inRow.or(() -> one.said().hand().by().or(plan::by).map(Written::value));
        Optional<Convention> known = id.map(catalogue.conventions()::get).map(Written::value);
        if (known.isEmpty()) {
            findings.add(ListCodes.UNKNOWN_WORD, one.spot(), "convention " + id.orElse(""), id.isEmpty()
                            ? "Nothing says who measured this." : "“" + id.get() + "” is no measuring convention of the catalogue.",
                    id.map(name -> NearMiss.question(name, catalogue.conventions().keySet())).orElse("")
                            + "Conventions are declared in conventions.yaml; by: names one for the whole list or for a column.");
        }
        return known;
    }
}
