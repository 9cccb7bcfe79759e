package exergue.source.works;

import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.finding.Place;
import exergue.model.Work;
import exergue.model.WorkItem;
import exergue.model.Written;
import exergue.source.keys.FileKind;
import exergue.source.shape.ShapeCodes;
import exergue.source.text.Notebook;
import exergue.source.text.TextReader;
import java.io.IOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The works of all three files under one roof. Those of works.yaml come first, then works.json, then works.bib. */
public final class WorksReader {

    public static final String JSON = "works.json";
    public static final String BIB = "works.bib";
    /** In which works stand, by hand or from a reference manager. */
    public static final List<String> FILES = List.of(FileKind.WORKS.where(), JSON, BIB);

    private final Notebook notebook;
    private final Map<String, WorkEntry> entries;
    private final Map<String, ForeignWork> foreign = new LinkedHashMap<>();

    private WorksReader(Map<String, WorkEntry> entries, Notebook notebook) {
        this.entries = entries;
        this.notebook = notebook;
    }

    /** @param entries of works.yaml, by id */
    public static Map<String, Work> read(Map<String, WorkEntry> entries, Set<String> files, TextReader texts, Notebook notebook)
            throws IOException {
        WorksReader reader = new WorksReader(entries, notebook);
        if (files.contains(JSON)) {
            texts.read(JSON).ifPresentOrElse(text -> CslJson.read(text, notebook).forEach(reader::add), () -> notebook.leaveUnread(JSON));
        }
        if (files.contains(BIB)) {
            texts.read(BIB).ifPresentOrElse(text -> BibWorks.read(text, notebook).forEach(reader::add), () -> notebook.leaveUnread(BIB));
        }
        return reader.joined();
    }

    private void add(ForeignWork work) {
        ForeignWork first = foreign.putIfAbsent(work.id().value(), work);
        if (first != null) {
            twice(work.id(), first.id().place(), "Delete one of the two, or give it another id.");
        }
    }

    private Map<String, Work> joined() {
        Map<String, Work> works = new LinkedHashMap<>();
        entries.forEach((id, entry) -> works.put(id, work(entry, foreign.get(id))));
        foreign.forEach((id, work) -> works.computeIfAbsent(id, same -> work(work, Optional.empty(), false)));
        return Collections.unmodifiableMap(works);
    }

    private Work work(WorkEntry entry, ForeignWork other) {
        if (other != null) {
            entry.printed().first().ifPresent(key -> twice(entry.id(), other.id().place(),
                    "Leave only “sign” and “standard” under “" + entry.id() + "” in works.yaml, or delete the work from "
                            + other.id().place().file() + "."));
            return work(other, entry.sign(), entry.standard());
        }
        WorkEntry.Printed printed = entry.printed();
        Written<String> title = printed.title().orElseGet(() -> missing("title", "The coins of the harbour", entry));
        Written<String> sign = entry.sign().orElseGet(() -> missing("sign", "Hallam", entry));
        return new Work(entry.id(), sign, entry.standard(), new Work.AsPrinted(printed.authors(), printed.year(), title,
                printed.in(), printed.rest()));
    }

    private Written<String> missing(String key, String example, WorkEntry entry) {
        String id = entry.id().value();
        Optional<String> near = entry.printed().first().isEmpty() ? NearMiss.of(id, foreign.keySet()) : Optional.empty();
        notebook.add(Finding.of(ShapeCodes.MISSING_KEY, entry.place(), id, "The key “" + key + "” is missing here.",
                near.map(work -> "Is this the work “" + work + "” of " + foreign.get(work).id().place().file() + "? Then write its id so.")
                        .orElse("Write it: " + key + ": " + example + ".")));
        return new Written<>("", entry.place());
    }

    private Work work(ForeignWork work, Optional<Written<String>> given, boolean standard) {
        WorkItem item = work.item();
        if (item.text("title").orElse("").isBlank()) {
            notebook.add(Finding.of(WorksCodes.WORK_WITHOUT_TITLE, work.id().place(), work.id().value(),
                    "The work “" + work.id() + "” has no title.", "Add its title in your reference manager, or in the file."));
        }
        Written<String> sign = given.or(work::sign).orElseGet(() -> suggested(work));
        return new Work(work.id(), sign, standard, new Work.Item(item));
    }

    private Written<String> suggested(ForeignWork work) {
        String names = work.item().first().stream().map(WorkItem.Person::shortName).limit(2).collect(Collectors.joining(" and "));
        String year = Optional.ofNullable(work.item().dates().get("issued")).map(WorkItem.Date::shortForm).orElse("");
        String sign = (names + " " + year).strip();
        String used = names.isEmpty() ? work.item().text("title").filter(title -> !title.isBlank()).orElse(work.id().value()) : sign;
        boolean json = work.id().place().file().equals(JSON);
        notebook.add(Finding.of(WorksCodes.WORK_WITHOUT_SIGN, work.id().place(), work.id().value(),
                "The work “" + work.id() + "” has no sign for references; “" + used + "” is printed.",
                "Write the sign you want: " + (json ? "\"title-short\": \"" + used + "\"" : "shorthand = {" + used + "}")
                        + " with the work, or in works.yaml: " + work.id() + ": {sign: '" + used.replace("'", "''") + "'}."));
        return new Written<>(used, work.id().place());
    }

    private void twice(Written<String> id, Place other, String remedy) {
        notebook.add(Finding.of(WorksCodes.WORK_DECLARED_TWICE, id.place(), "",
                "The work “" + id + "” is declared twice.", remedy)
                .withRelated(other, "the other one"));
    }
}
