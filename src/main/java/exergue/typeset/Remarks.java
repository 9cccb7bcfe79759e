package exergue.typeset;

import com.openhtmltopdf.util.Diagnostic;
import exergue.finding.Finding;
import exergue.finding.Place;
import java.util.function.Consumer;
import java.util.logging.Level;

/** What the page engine only logs, as findings. */
final class Remarks {

    private final TemplateFiles templates;
    private final Consumer<Finding> findings;

    Remarks(TemplateFiles templates, Consumer<Finding> findings) {
        this.templates = templates;
        this.findings = findings;
    }

    /** Whether the engine may read from this address; if not, that is a finding. */
    boolean allowed(String address) {
        boolean ours = address != null && (TreeResources.resolve("", address).isPresent()
                || TreeResources.resolve(TreeResources.TEMPLATE + ":/book.ftlh", address).isPresent());
        if (!ours) {
            refused(address);
        }
        return ours;
    }

    void refused(String address) {
        findings.accept(Finding.of(TypesetCodes.OUTSIDE_RESOURCE, Place.ofFile(templates.shown("page.css")), "",
                "A page asks for “" + address + "”, which is not in the source folder.",
                "Put the file into the catalogue's templates folder and name it by its path from there, or take "
                        + "the line out of the template or style sheet."));
    }

    void take(Diagnostic diagnostic) {
        if (diagnostic.getLevel().intValue() < Level.WARNING.intValue()) {
            return;
        }
        String said = String.valueOf(diagnostic.getFormattedMessage());
        String kind = diagnostic.getLogMessageId() instanceof Enum<?> id ? id.name() : "";
        if (kind.contains("REJECTED") || kind.contains("BASE_URI")) {
            return;
        }
        if (kind.contains("IMAGE")) {
            Place place = picture(diagnostic);
            findings.accept(Finding.of(TypesetCodes.PICTURE_UNREADABLE, place, "",
                    "The picture “" + place.file() + "” cannot be read to its end; it may be damaged, or over 128 MB.",
                    "Open it in a picture program and save it again as JPEG or PNG, below 128 MB."));
            return;
        }
        findings.accept(Finding.of(TypesetCodes.ENGINE_REMARK, Place.ofFile(templates.shown("page.css")), "",
                "The page engine remarks: " + said,
                "Look for what it names in the templates and style sheets."));
    }

    private Place picture(Diagnostic diagnostic) {
        for (Object argument : diagnostic.getArgs()) {
            String address = String.valueOf(argument);
            if (address.startsWith(TreeResources.TREE + ":/")) {
                return Place.ofFile(TreeResources.pathOf(address));
            }
        }
        return Place.ofFile(templates.shown("book.ftlh"));
    }
}
