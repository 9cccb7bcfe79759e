package exergue.source.markdown;

import exergue.finding.Place;
import exergue.model.Inline;
import java.util.Optional;

/** What becomes of {@code [^label]} in a line of prose. */
@FunctionalInterface
interface FootnoteCalls {

    /** The note that is called here; nothing if there is none or none may be called, which has then been reported. */
    Optional<Inline.Footnote> at(String label, Place place);

    /** For lines where no note can stand. @param line as in "A heading" */
    static FootnoteCalls refusedBy(String line, Manuscript manuscript) {
        return (label, place) -> {
            manuscript.report(MarkdownCodes.UNSUPPORTED_MARKDOWN, place,
                    line + " cannot call a footnote, as “[^" + label + "]” would.",
                    "Call it in a paragraph of a chapter, or say it here in the line itself.");
            return Optional.empty();
        };
    }
}
