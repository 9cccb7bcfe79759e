package exergue.source.works;

import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.WorkItem;
import exergue.model.Written;
import exergue.source.text.Notebook;
import exergue.source.text.SourceText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * works.json: CSL-JSON as in the specification of the Citation Style Language 1.0.2. What a reference manager adds of its
 * own is passed over.
 */
final class CslJson {

    private final Notebook notebook;

    private CslJson(Notebook notebook) {
        this.notebook = notebook;
    }

    static List<ForeignWork> read(SourceText text, Notebook notebook) {
        Optional<Json> whole = JsonFile.read(text, notebook);
        if (whole.isEmpty()) {
            return List.of();
        }
        if (!(whole.get() instanceof Json.Many works)) {
            notebook.add(Finding.of(WorksCodes.NOT_JSON, whole.get().place(), "",
                    "The file does not hold a list of works: it does not begin with [.",
                    "Export the works as CSL-JSON; or put [ before all the works and ] after them."));
            return List.of();
        }
        CslJson reader = new CslJson(notebook);
        return works.members().stream().flatMap(work -> reader.work(work).stream()).toList();
    }

    private Optional<ForeignWork> work(Json json) {
        if (!(json instanceof Json.Pairs work)) {
            notebook.add(Finding.of(WorksCodes.NOT_JSON, json.place(), "", "Here a work is wanted, in braces { }.",
                    "Delete what stands here, or make it a work with an id, a type and a title."));
            return Optional.empty();
        }
        if (!(work.values().get("id") instanceof Json.Plain id) || id.text().isBlank()) {
            notebook.add(Finding.of(WorksCodes.WORK_WITHOUT_ID, work.place(), "",
                    title(work) + " has no id.", "Give it one: \"id\": \"a-short-name\"."));
            return Optional.empty();
        }
        return Optional.of(new ForeignWork(written(id), sign(work), item(work)));
    }

    private static String title(Json.Pairs work) {
        String title = work.plain("title");
        return title.isEmpty() ? "This work" : "The work “" + title + "”";
    }

    private static Written<String> written(Json.Plain plain) {
        return new Written<>(plain.text().strip(), plain.place());
    }

    /** The older spelling, the present one, and the label that reference managers make. */
    private static Optional<Written<String>> sign(Json.Pairs work) {
        return Stream.of("shortTitle", "title-short", "citation-label").map(work.values()::get)
                .filter(value -> value instanceof Json.Plain plain && !plain.text().isBlank())
                .map(value -> written((Json.Plain) value)).findFirst();
    }

    private static WorkItem item(Json.Pairs work) {
        Map<String, Written<String>> texts = new LinkedHashMap<>();
        Map<String, List<WorkItem.Person>> people = new LinkedHashMap<>();
        Map<String, WorkItem.Date> dates = new LinkedHashMap<>();
        work.values().forEach((key, value) -> {
            if (CslVariables.PEOPLE.contains(key) && value instanceof Json.Many names) {
                people.put(key, names.members().stream().flatMap(name -> person(name).stream()).toList());
            } else if (CslVariables.DATES.contains(key)) {
                date(value).ifPresent(date -> dates.put(key, date));
            } else if (CslVariables.TEXTS.contains(key) && value instanceof Json.Plain plain) {
                texts.put(key, written(plain));
            }
        });
        String type = work.plain("type");
        return new WorkItem(type.isEmpty() ? "document" : type, texts, people, dates);
    }

    private static Optional<WorkItem.Person> person(Json json) {
        if (json instanceof Json.Plain plain) {
            return Optional.of(WorkItem.Person.body(plain.text()));
        }
        if (!(json instanceof Json.Pairs name)) {
            return Optional.empty();
        }
        String literal = name.plain("literal");
        String particle = name.plain("non-dropping-particle");
        String given = (name.plain("given") + " " + name.plain("dropping-particle")).strip();
        return Optional.of(new WorkItem.Person(name.plain("family"), given, particle, name.plain("suffix"), literal));
    }

    private static Optional<WorkItem.Date> date(Json json) {
        if (json instanceof Json.Plain plain) {
            return Optional.of(Years.of(plain.text()));
        }
        if (!(json instanceof Json.Pairs date)) {
            return Optional.empty();
        }
        String circa = date.plain("circa");
        boolean about = !circa.isEmpty() && !circa.equals("false") && !circa.equals("0");
        if (date.values().get("date-parts") instanceof Json.Many spans) {
            List<List<Integer>> parts = spans.members().stream().map(CslJson::parts).filter(part -> !part.isEmpty()).toList();
            if (!parts.isEmpty()) {
                return Optional.of(new WorkItem.Date(parts, "", about));
            }
        }
        String words = date.plain("literal").isEmpty() ? date.plain("raw") : date.plain("literal");
        return words.isEmpty() ? Optional.empty() : Optional.of(Years.of(words));
    }

    private static List<Integer> parts(Json json) {
        List<Integer> parts = new ArrayList<>();
        if (json instanceof Json.Many many) {
            for (Json part : many.members()) {
                if (!(part instanceof Json.Plain plain) || !plain.text().matches("-?[0-9]{1,5}")) {
                    break;
                }
                parts.add(Integer.valueOf(plain.text()));
            }
        }
        return parts;
    }
}
