package exergue.model;

import exergue.dating.DateStyle;
import exergue.dating.Era;
import exergue.measure.Kind;
import exergue.measure.PrintForm;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What the editor has decided.
 *
 * @param order      of the measurement line
 * @param inRemarks  measured things that are printed among the remarks instead, for coins that have them
 * @param separator  between its members: ", "
 * @param form       of the figures
 * @param missing    printed where a figure is missing: an en dash
 * @param notApplicable printed where there can be none; often empty
 * @param illegible  printed where a record cannot be read
 * @param signs      marks after a figure
 * @param prefer     convention ids, the first that has a reading is printed
 * @param metals     metals by id, with the sign or word the book prints
 * @param otherHands what becomes of figures that are not the ones printed
 * @param rows       specimens in aligned rows or in running lines
 * @param coinOrder  order of coins within their type
 * @param words      words of the book that the house has otherwise than its language
 * @param dates      how dates are printed
 * @param eras       eras by id, whose years can stand on coins
 * @param indexes    what indexes and cross-references say
 * @param dieNames   within what the name of a die is one die's alone
 * @param pictures   how photographs of coins are printed
 * @param rules      what is wanted of the entries
 */
public record HouseStyle(List<Kind> order, List<Kind> inRemarks, String separator, PrintForm form, String missing, String notApplicable,
                         String illegible, Signs signs, List<Written<String>> prefer, Map<String, Metal> metals,
                         OtherHands otherHands, Rows rows, CoinOrder coinOrder, Quotes quotes, Map<BookWord, String> words,
                         DateStyle dates, Map<String, Era> eras, IndexStyle indexes,
                         DieNames dieNames, PictureStyle pictures, HouseRules rules) {

    public HouseStyle {
        order = List.copyOf(order);
        inRemarks = inRemarks.stream().filter(Predicate.not(order::contains)).distinct().toList();
        prefer = List.copyOf(prefer);
        words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
        eras = Collections.unmodifiableMap(new LinkedHashMap<>(eras));
        metals = Collections.unmodifiableMap(new LinkedHashMap<>(metals));
    }

    /** Every kind that is printed: those of the measurement line, then those among the remarks. */
    public List<Kind> printed() {
        return Stream.concat(order.stream(), inRemarks.stream()).toList();
    }

    /** @param otherHand after a reading under any but the main convention; @param damaged after a weight that damage has changed */
    public record Signs(String otherHand, String damaged) { }

    /** The four quotation marks of the book's language. */
    public record Quotes(String open, String close, String innerOpen, String innerClose) { }

    /** Figures of a coin under other conventions than the one that is printed. */
    public enum OtherHands {
        KEPT("kept"), PRINTED("printed");

        private final String word;

        OtherHands(String word) {
            this.word = word;
        }

        /** Kept in the data only, or printed among the remarks as well. */
        public String word() {
            return word;
        }
    }

    public enum Rows {
        ALIGNED("aligned"), RUNNING("running");

        private final String word;

        Rows(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public enum CoinOrder {
        BY_ID("by id"), BY_DIES("by dies"), BY_WEIGHT("by weight");

        private final String words;

        CoinOrder(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Where dies are numbered anew: O1 of another mint or type is then another die. */
    public enum DieNames {
        ONE_SERIES("one series"), BY_MINT("by mint"), BY_TYPE("by type");

        private final String words;

        DieNames(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
