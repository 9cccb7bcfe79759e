package exergue.source.works;

import java.util.Set;

/** The variables of the Citation Style Language 1.0.2, appendix IV, as far as they tell of a work and are printed. */
final class CslVariables {

    static final Set<String> PEOPLE = Set.of("author", "chair", "collection-editor", "compiler", "composer", "container-author",
            "contributor", "curator", "director", "editor", "editor-translator", "editorial-director", "executive-producer", "guest", "host",
            "illustrator", "interviewer", "narrator", "organizer", "original-author", "performer", "producer", "recipient",
            "reviewed-author", "script-writer", "series-creator", "translator");

    static final Set<String> DATES = Set.of("accessed", "available-date", "event-date", "issued", "original-date", "submitted");

    static final Set<String> TEXTS = Set.of("archive", "archive_collection", "archive_location", "archive-place", "authority",
            "call-number", "chapter-number", "citation-label", "collection-number", "collection-title", "container-title", "container-title-short",
            "dimensions", "division", "DOI", "edition", "event", "event-place", "event-title", "genre", "ISBN", "ISSN", "issue",
            "jurisdiction", "language", "medium", "note", "number", "number-of-pages", "number-of-volumes", "original-publisher",
            "original-publisher-place", "original-title", "page", "page-first", "part-number", "part-title", "printing-number",
            "publisher", "publisher-place", "references", "reviewed-genre", "reviewed-title", "scale", "section", "source",
            "status", "supplement-number", "title", "title-short", "URL", "version", "volume", "volume-title");

    private CslVariables() { }
}
