package exergue.source.markdown;

import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Chapter;
import exergue.model.HouseRules;
import exergue.model.HouseStyle;
import exergue.source.text.Notebook;
import exergue.source.text.SourceText;
import exergue.source.yaml.Scalar;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A piece of Markdown, wherever it stands: a chapter's file or a value in an entry.
 *
 * @param text     as written
 * @param places   offset and length in the text, as String counts, to the place in the file
 * @param composed letters and accents joined (NFC)
 * @param house    what the whole run knows
 * @param path     where it is in the data; empty for a chapter
 * @param folder   of the file, to which paths of pictures may be relative
 * @param studies  whether figures reckoned from the coins may stand in it: in every chapter but that of methods, which has counts of its own
 */
public record Manuscript(String text, Places places, UnaryOperator<String> composed, House house, String path,
                         String folder, boolean studies) {

    /** Offsets in a text to places in its file. */
    @FunctionalInterface
    interface Places {
        Place at(int index, int length);
    }

    /** @param files every path of the tree; @param quotes the house's quotation marks */
    public record House(Notebook notebook, Set<String> files, HouseStyle.Quotes quotes, List<HouseRules.Wording> wordings) {
        public House {
            wordings = List.copyOf(wordings);
        }
    }

    public static Manuscript of(SourceText source, House house) {
        int slash = source.file().lastIndexOf('/');
        return new Manuscript(source.text(), source::place, source::composed, house, "",
                slash < 0 ? "" : source.file().substring(0, slash), !source.file().equals(Chapter.METHODS));
    }

    public static Manuscript of(Scalar scalar, House house, String path) {
        String text = scalar.text();
        Places places = (index, length) -> scalar.at(text.codePointCount(0, index),
                text.codePointCount(index, Math.min(text.length(), index + length)));
        return new Manuscript(text, places, UnaryOperator.identity(), house, path, "", false);
    }

    Place at(int index, int length) {
        return places.at(index, length);
    }

    void report(Finding finding) {
        house.notebook().add(finding);
    }

    void report(Code code, Place place, String what, String remedy) {
        house.notebook().add(Finding.of(code, place, path, what, remedy));
    }
}
