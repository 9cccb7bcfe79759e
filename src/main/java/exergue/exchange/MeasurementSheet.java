package exergue.exchange;

import exergue.exchange.SheetTable.Cell;
import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.NearMiss;
import exergue.finding.Place;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Parsed;
import exergue.measure.Reading;
import exergue.measure.ReadingParser;
import exergue.measure.Remark;
import exergue.model.Catalogue;
import exergue.model.Measurement;
import exergue.model.Written;
import exergue.source.keys.Readings;
import exergue.source.text.Notebook;
import exergue.source.text.SourceText;
import exergue.source.text.TextReader;
import exergue.study.match.FreshCoin;
import exergue.study.match.SheetCodes;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Fresh measurements from a table: one line a coin, with the columns label, ticket, weight, diameter and axis in any order. */
public final class MeasurementSheet {

    private static final List<Kind> KINDS = List.of(Kind.WEIGHT, Kind.DIAMETER, Kind.AXIS);
    private static final List<String> COLUMNS = List.of("label", "ticket", "weight", "diameter", "axis");

    private final Convention convention;
    private final Tickets tickets;
    private final List<Finding> findings = new ArrayList<>();

    private MeasurementSheet(Catalogue catalogue, Convention convention) {
        this.convention = convention;
        this.tickets = new Tickets(catalogue);
    }

    /** @param coins those that have a figure, in the order of the sheet */
    public record Sheet(List<FreshCoin> coins, Findings findings) {
        public Sheet {
            coins = List.copyOf(coins);
        }
    }

    /**
     * @param file       in the tree
     * @param convention under which the coins were measured; with {@link Convention#UNDECLARED} every figure needs its unit
     */
    public static Sheet read(Tree tree, String file, Catalogue catalogue, Convention convention) throws IOException {
        Notebook notebook = new Notebook();
        Optional<SourceText> text = new TextReader(tree, notebook).read(file);
        MeasurementSheet sheet = new MeasurementSheet(catalogue, convention);
        List<FreshCoin> coins = text.map(sheet::coins).orElse(List.of());
        return new Sheet(coins, notebook.findings().and(Findings.of(sheet.findings)));
    }

    private List<FreshCoin> coins(SourceText text) {
        SheetTable.Read read = SheetTable.of(text);
        read.fault().ifPresent(findings::add);
        if (read.table().isEmpty() || !headingsAreKnown(read.table().get())) {
            return List.of();
        }
        SheetTable table = read.table().get();
        List<FreshCoin> coins = new ArrayList<>();
        Set<String> labels = new HashSet<>();
        for (int row = 0; row < table.rows().size(); row++) {
            coin(table.row(row), table.place(row)).ifPresent(coins::add);
        }
        for (FreshCoin coin : coins) {
            if (!labels.add(coin.label().value())) {
                findings.add(Finding.of(SheetCodes.LABEL_TWICE, coin.label().place(), "label",
                        "The label “" + coin.label() + "” stands here a second time.", "Give each coin a label of its own."));
            }
        }
        return coins;
    }

    private boolean headingsAreKnown(SheetTable table) {
        for (Cell heading : table.headings()) {
            if (!COLUMNS.contains(heading.text()) && !heading.text().isEmpty()) {
                findings.add(Finding.of(SheetCodes.UNKNOWN_COLUMN, heading.place(), "", "The column “" + heading.text() + "” is not read.",
                        NearMiss.question(heading.text(), COLUMNS)
                                + "The columns are " + String.join(", ", COLUMNS) + "; others may stay."));
            }
        }
        boolean some = KINDS.stream().anyMatch(kind -> table.headings().stream().anyMatch(head -> head.text().equals(kind.word())));
        if (!some) {
            findings.add(Finding.of(SheetCodes.NOT_A_TABLE, table.headings().get(0).place(), "",
                    "The first line has no heading “weight”, “diameter” or “axis”.",
                    "Write a first line such as label,ticket,weight,diameter,axis."));
        }
        return some;
    }

    private Optional<FreshCoin> coin(Map<String, Cell> row, Place place) {
        Map<Kind, Written<Reading>> readings = new EnumMap<>(Kind.class);
        for (Kind kind : KINDS) {
            Optional.ofNullable(row.get(kind.word())).flatMap(cell -> reading(kind, cell)).ifPresent(read -> readings.put(kind, read));
        }
        Cell label = row.getOrDefault("label", row.getOrDefault("ticket", new Cell("line " + place.line(), place)));
        if (KINDS.stream().noneMatch(kind -> row.containsKey(kind.word()))) {
            findings.add(Finding.of(SheetCodes.NO_FIGURE, label.place(), "", "The coin “" + label.text() + "” has no figure.",
                    "Measure it, or take the line out."));
        }
        return readings.isEmpty() ? Optional.empty() : Optional.of(new FreshCoin(new Written<>(label.text(), label.place()),
                Optional.ofNullable(row.get("ticket")).flatMap(this::ticket),
                new Measurement(new Written<>(convention.id(), place), convention, readings, place)));
    }

    private Optional<Written<Reading>> reading(Kind kind, Cell cell) {
        Parsed parsed = ReadingParser.parse(kind, cell.text(), convention);
        if (parsed instanceof Parsed.Accepted accepted) {
            accepted.remarks().forEach(remark -> report(remark, kind, cell));
            return Optional.of(new Written<>(accepted.reading(), cell.place()));
        }
        report(((Parsed.Refused) parsed).remark(), kind, cell);
        return Optional.empty();
    }

    private void report(Remark remark, Kind kind, Cell cell) {
        findings.add(Finding.of(Readings.code(remark.fault()), cell.place().within(remark.offset(), remark.length()), kind.word(),
                remark.what(), remark.remedy()));
    }

    private Optional<Written<String>> ticket(Cell cell) {
        Optional<String> coin = tickets.coin(cell.text());
        if (coin.isEmpty()) {
            findings.add(Finding.of(SheetCodes.UNKNOWN_TICKET, cell.place(), "ticket",
                    "The ticket “" + cell.text() + "” names no coin of the catalogue, or more than one.",
                    NearMiss.question(cell.text(), tickets.known())
                            + "A ticket is the id of a coin, or its number in its collection or of its find."));
        }
        return coin.map(id -> new Written<>(id, cell.place()));
    }
}
