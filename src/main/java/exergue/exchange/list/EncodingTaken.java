package exergue.exchange.list;

import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.source.list.ListCodes;
import exergue.source.text.SourceText;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says that an encoding was taken, with the first word by which a reader sees whether that was right. */
final class EncodingTaken {

    private static final Pattern WORD_BEYOND_ASCII = Pattern.compile("\\p{L}*[^\\x00-\\x7F\\u00B7]\\p{L}*");

    private EncodingTaken() { }

    /** @param shown the text of the list as it may be shown: a word that names the place of a find is not quoted */
    static Optional<Finding> in(Sheet sheet, String file, String shown) {
        if (!sheet.encodingTaken()) {
            return Optional.empty();
        }
        Matcher word = WORD_BEYOND_ASCII.matcher(shown);
        boolean found = word.find();
        Place place = found ? new SourceText(file, shown).place(word.start(), word.group().length()) : Place.ofFile(file);
        return Optional.of(Finding.of(ListCodes.ENCODING_TAKEN, place, "", "The list is not UTF-8 and is taken to be Windows-1252"
                        + (found ? "; so this word reads “" + word.group() + "”." : "; only names of find-spots, which are not shown, depend on it."),
                "If that is right, write encoding: windows-1252 into the file beside the list. If not, save the list again as “CSV UTF-8”."));
    }
}
