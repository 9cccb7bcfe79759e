package exergue.source.works;

import exergue.finding.Finding;
import exergue.model.WorkItem;
import exergue.model.Written;
import exergue.source.text.Notebook;
import exergue.source.text.SourceText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** works.bib: the kinds and fields of BibTeX and biblatex in the words of CSL. Fields that are not printed are passed over. */
final class BibWorks {

    private static final Map<String, String> KINDS = Map.ofEntries(Map.entry("article", "article-journal"),
            Map.entry("book", "book"), Map.entry("mvbook", "book"), Map.entry("collection", "book"),
            Map.entry("mvcollection", "book"), Map.entry("reference", "book"), Map.entry("proceedings", "book"),
            Map.entry("booklet", "pamphlet"), Map.entry("inbook", "chapter"), Map.entry("incollection", "chapter"),
            Map.entry("suppbook", "chapter"), Map.entry("inreference", "entry-encyclopedia"),
            Map.entry("inproceedings", "paper-conference"), Map.entry("conference", "paper-conference"),
            Map.entry("manual", "book"), Map.entry("mastersthesis", "thesis"), Map.entry("phdthesis", "thesis"),
            Map.entry("thesis", "thesis"), Map.entry("techreport", "report"), Map.entry("report", "report"),
            Map.entry("unpublished", "manuscript"), Map.entry("online", "webpage"), Map.entry("electronic", "webpage"),
            Map.entry("www", "webpage"), Map.entry("periodical", "periodical"), Map.entry("dataset", "dataset"));

    /** A field and what it is in CSL; where several fill one, the first that is written does. */
    private static final List<Map.Entry<String, String>> TEXTS = List.of(Map.entry("title", "title"),
            Map.entry("journaltitle", "container-title"), Map.entry("journal", "container-title"),
            Map.entry("booktitle", "container-title"), Map.entry("maintitle", "container-title"),
            Map.entry("series", "collection-title"), Map.entry("volume", "volume"), Map.entry("volumes", "number-of-volumes"),
            Map.entry("edition", "edition"), Map.entry("pages", "page"), Map.entry("chapter", "chapter-number"),
            Map.entry("publisher", "publisher"), Map.entry("institution", "publisher"), Map.entry("school", "publisher"),
            Map.entry("organization", "publisher"), Map.entry("location", "publisher-place"),
            Map.entry("address", "publisher-place"), Map.entry("howpublished", "medium"), Map.entry("type", "genre"), Map.entry("note", "note"),
            Map.entry("addendum", "note"), Map.entry("doi", "DOI"), Map.entry("url", "URL"), Map.entry("isbn", "ISBN"), Map.entry("issn", "ISSN"));

    private static final List<String> PEOPLE = List.of("author", "editor", "translator");

    private final Notebook notebook;

    private BibWorks(Notebook notebook) {
        this.notebook = notebook;
    }

    static List<ForeignWork> read(SourceText text, Notebook notebook) {
        BibWorks reader = new BibWorks(notebook);
        return BibFile.read(text, notebook).stream().map(reader::work).toList();
    }

    private ForeignWork work(BibEntry entry) {
        Map<String, Written<String>> texts = new LinkedHashMap<>();
        for (Map.Entry<String, String> field : TEXTS) {
            Written<String> written = entry.fields().get(field.getKey());
            if (written != null && !written.value().isBlank()) {
                texts.putIfAbsent(field.getValue(), words(entry, written));
            }
        }
        number(entry, texts);
        subtitle(entry, texts);
        Map<String, List<WorkItem.Person>> people = new LinkedHashMap<>();
        for (String who : PEOPLE) {
            List<WorkItem.Person> names = BibNames.read(entry.field(who), latex -> Latex.read(latex).words());
            if (!names.isEmpty() && !names.get(0).equals(WorkItem.Person.body(""))) {
                people.put(who, names);
            }
        }
        String type = KINDS.getOrDefault(entry.kind(), "document");
        return new ForeignWork(entry.key(), sign(entry), new WorkItem(type, texts, people, dates(entry)));
    }

    /** "number" is the issue of a journal, and elsewhere the number within the series. */
    private void number(BibEntry entry, Map<String, Written<String>> texts) {
        Written<String> number = entry.fields().get("number");
        if (number != null) {
            boolean journal = entry.kind().equals("article") || entry.kind().equals("periodical");
            boolean series = entry.fields().containsKey("series");
            texts.put(journal ? "issue" : series ? "collection-number" : "number", words(entry, number));
        }
    }

    private void subtitle(BibEntry entry, Map<String, Written<String>> texts) {
        Written<String> subtitle = entry.fields().get("subtitle");
        Written<String> title = texts.get("title");
        if (subtitle != null && title != null) {
            texts.put("title", new Written<>(title.value() + ": " + words(entry, subtitle).value(), title.place()));
        }
    }

    private Written<String> words(BibEntry entry, Written<String> latex) {
        Latex.Text text = Latex.read(latex.value());
        text.unread().ifPresent(command -> notebook.add(Finding.of(WorksCodes.LATEX_NOT_READ, latex.place(), entry.key().value(),
                "“" + command + "” is a command of LaTeX that means nothing here.",
                "Write the letter itself; files are UTF-8, so every letter may stand in them.")));
        return new Written<>(text.words(), latex.place());
    }

    private Optional<Written<String>> sign(BibEntry entry) {
        return Stream.of("shorthand", "shorttitle").map(entry.fields()::get)
                .filter(field -> field != null && !field.value().isBlank()).map(field -> words(entry, field)).findFirst();
    }

    private static Map<String, WorkItem.Date> dates(BibEntry entry) {
        String written = entry.field("date").isBlank() ? entry.field("year") : entry.field("date");
        String when = Latex.read(written).words();
        return when.isEmpty() ? Map.of() : Map.of("issued", Years.of(when));
    }
}
