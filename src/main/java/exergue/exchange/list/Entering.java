package exergue.exchange.list;

import exergue.exchange.list.RowFindings.Spot;
import exergue.files.MemoryTree;
import exergue.files.Tree;
import exergue.finding.Excused;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.measure.Kind;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.source.ListPlans;
import exergue.source.keys.FileKind;
import exergue.source.list.ColumnContent;
import exergue.source.list.ListCodes;
import exergue.source.list.ListPlan;
import exergue.source.text.Notebook;
import exergue.source.text.TextReader;
import exergue.source.tidy.Tidy;
import exergue.source.yaml.YamlReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A list held against a catalogue: which coins are new, which are there, and what their entries would be. Writes nothing. */
public final class Entering {

    private final Catalogue catalogue;
    private final Tree source;
    private final boolean addFigures;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Excused> excused = new ArrayList<>();
    private final RowFindings ofRows = new RowFindings();
    private final Map<String, byte[]> made = new LinkedHashMap<>();
    private final Map<String, byte[]> changed = new LinkedHashMap<>();
    private final Map<String, Integer> rows = new LinkedHashMap<>();
    private int there;
    private final List<Integer> withoutFigures = new ArrayList<>();

    private Entering(Catalogue catalogue, Tree source, boolean addFigures) {
        this.catalogue = catalogue;
        this.source = source;
        this.addFigures = addFigures;
    }

    /**
     * @param plan       the file that says how the list is read
     * @param source     of the catalogue
     * @param addFigures whether figures are added to entries that have none of this list
     * @throws IOException if the disk fails
     */
    public static Entered of(NamedBytes list, NamedBytes plan, Catalogue catalogue, Tree source, boolean addFigures) throws IOException {
        return new Entering(catalogue, source, addFigures).of(list, plan);
    }

    private Entered of(NamedBytes list, NamedBytes planned) throws IOException {
        Notebook notebook = new Notebook();
        Optional<ListPlan> plan = ListPlans.read(new MemoryTree(Map.of(planned.path(), planned.bytes())), planned.path(), catalogue, notebook);
        Optional<Sheet> sheet = plan.flatMap(said -> SheetReader.read(list.bytes(), list.path(), said.layout(), notebook));
        findings.addAll(notebook.findings().all());
        if (sheet.isEmpty() || notebook.findings().hasErrors()) {
            String shownPlan = new String(planned.bytes(), StandardCharsets.UTF_8);
            return Entered.nothing(Findings.of(findings), Map.of(planned.path(), plan.map(said -> ExactPlaces.of(catalogue, said).hidden(shownPlan)).orElse(shownPlan)));
        }
        ColumnsFound columns = ColumnsFound.of(sheet.get(), plan.get(), catalogue);
        findings.addAll(columns.findings());
        ExactPlaces places = ExactPlaces.of(catalogue, plan.get(), sheet.get(), columns.columns());
        Map<String, String> shown = Map.of(list.path(), places.hidden(Hidden.in(sheet.get(), columns.columns().stream()
                .filter(column -> column.holds() == ColumnContent.FIND_SPOT).map(Column::index).toList())),
                planned.path(), places.hidden(new String(planned.bytes(), StandardCharsets.UTF_8)));
        EncodingTaken.in(sheet.get(), list.path(), shown.get(list.path())).ifPresent(findings::add);
        if (Findings.of(columns.findings()).hasErrors()) {
            return Entered.nothing(Findings.of(findings), shown);
        }
        RowReader reader = new RowReader(catalogue, plan.get(), sheet.get(), columns.columns(), places);
        List<Draft> drafts = reader.drafts();
        findings.addAll(reader.findings());
        enter(drafts);
        unread();
        findings.addAll(ofRows.all());
        return new Entered(made, changed, rows, Optional.of(new Entered.Look(sheet.get().how(), sheet.get().headingsRow(),
                sheet.get().above().size(), reader.leftOut(), sheet.get().rows().size() - reader.leftOut(), there, withoutFigures.size())),
                shown, Findings.of(findings, excused));
    }

    private void enter(List<Draft> drafts) throws IOException {
        KnownCoins known = new KnownCoins(catalogue);
        Map<String, Draft> seen = new HashMap<>();
        for (Draft draft : drafts) {
            Set<Coin> coins = known.of(draft);
            String id = coins.isEmpty() ? draft.id() : coins.iterator().next().id().value();
            Draft before = seen.putIfAbsent(id, draft);
            if (coins.size() > 1) {
                List<String> ids = coins.stream().map(coin -> coin.id().value()).toList();
                ofRows.add(ListCodes.COIN_TWICE, Spot.of(draft.row()), "By its id the coin is “" + ids.get(0) + "”, by its inventory number “"
                        + ids.get(1) + "”.", "Look which of the two is meant, and mend the list or the entry.");
            } else if (before != null) {
                ofRows.add(ListCodes.COIN_TWICE, Spot.of(draft.row()), "This row is the coin “" + id + "”, and so is row " + before.row().number() + ".",
                        "If they are one coin, take one row out; if they are two, mend the number in one of them, or let ids: be made of more.");
            } else if (coins.isEmpty()) {
                make(draft);
            } else {
                compare(draft, coins.iterator().next());
            }
        }
    }

    /** A row is only known to be a new coin where all that are there can be read, and none is only stood in for. */
    private void unread() {
        List<String> unread = catalogue.coins().stream().map(Coin::place).filter(place -> place.line() == 0).map(Place::file).sorted().toList();
        if (!made.isEmpty() && !unread.isEmpty()) {
            boolean one = unread.size() == 1;
            findings.add(Finding.of(ListCodes.COIN_TWICE, Place.ofFile(unread.get(0)), "", "Whether coins of the list are there already cannot be told, "
                            + "since this entry" + (one ? "" : " and " + (unread.size() - 1) + " more") + " cannot be read.",
                    "Mend " + (one ? "it" : "them") + " first; the command check says what is wrong. Then run enter again."));
        }
    }

    private void make(Draft draft) {
        String yaml = draft.entry().yaml() + "\n";
        String file = FileKind.COIN.where() + draft.id() + ".yaml";
        if (source.has(file)) {
            ofRows.add(ListCodes.COIN_TWICE, Spot.of(draft.row()), "The coin would be “" + draft.id() + "”, but " + file
                    + " is there and has another id in it.", "Let that file be called after its id; the command check says how.");
            return;
        }
        made.put(file, Tidy.rewritten(yaml, FileKind.COIN).orElse(yaml).getBytes(StandardCharsets.UTF_8));
        rows.put(file, draft.row().number());
    }

    private void compare(Draft draft, Coin coin) throws IOException {
        there++;
        String file = coin.place().file();
        rows.put(file, draft.row().number());
        Notebook toldByTheCheck = new Notebook();
        Optional<EntryNode> written = new TextReader(source, toldByTheCheck).read(file)
                .flatMap(text -> YamlReader.read(text, toldByTheCheck).value()).map(EntryNode::of);
        if (written.isEmpty()) {
            return; // it cannot be read, and the check of the catalogue says so
        }
        EntryComparison comparison = new EntryComparison(draft, coin, written.get(), ofRows);
        Map<String, Map<Kind, Draft.Figure>> missing = comparison.look();
        excused.addAll(comparison.excused());
        if (missing.isEmpty()) {
            return;
        }
        if (!addFigures) {
            withoutFigures.add(draft.row().number());
            return;
        }
        Optional<String> added = Optional.of(new String(source.read(file), StandardCharsets.UTF_8));
        for (Map.Entry<String, Map<Kind, Draft.Figure>> hand : missing.entrySet()) {
            added = added.flatMap(now -> FiguresAdded.to(now, Draft.measurement(hand.getKey(), hand.getValue())));
        }
        if (added.isEmpty()) {
            ofRows.add(ListCodes.NOT_CHANGED, Spot.of(draft.row()), "The figures cannot be added to " + file + " without touching what is there.",
                    "Write also-measured: there in lines, each measurement after a hyphen; the command tidy does so.");
        } else {
            changed.put(file, added.get().getBytes(StandardCharsets.UTF_8));
        }
    }
}
