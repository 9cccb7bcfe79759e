package exergue.edition;

import exergue.model.Catalogue;
import exergue.model.Inline;
import exergue.model.Prose;
import java.util.List;
import java.util.stream.Collectors;

/** What tests look at in a finished book. */
final class Read {

    private Read() { }

    static Book book(Catalogue catalogue) {
        return Editor.edit(catalogue).book();
    }

    static List<EntryBlock> blocks(Catalogue catalogue) {
        return book(catalogue).body().stream().filter(Part.Entries.class::isInstance)
                .flatMap(part -> ((Part.Entries) part).blocks().stream()).toList();
    }

    static List<EntryBlock.Entry> entries(Catalogue catalogue) {
        return blocks(catalogue).stream().filter(EntryBlock.Entry.class::isInstance)
                .map(EntryBlock.Entry.class::cast).toList();
    }

    static List<Specimen> specimens(Catalogue catalogue) {
        return entries(catalogue).stream().flatMap(entry -> entry.specimens().stream()).toList();
    }

    static String line(Catalogue catalogue) {
        return specimens(catalogue).get(0).line();
    }

    /** The methods statement, a line a sentence, a blank line between paragraphs. */
    static String methods(Catalogue catalogue) {
        Part.Text methods = (Part.Text) book(catalogue).body().get(0);
        return methods.blocks().stream().map(block -> Inline.plain(((Prose.Paragraph) block).runs()))
                .map(text -> text.replaceAll("(?<=[a-z)0-9h”’]\\.) (?=\\p{Lu})", "\n"))
                .collect(Collectors.joining("\n\n")) + "\n";
    }
}
