package exergue.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A language a book can be set in, with what is usual in its print where the house says nothing. */
public enum Language {

    ENGLISH("en", "English", ".", "c.", ": ", new HouseStyle.Quotes("“", "”", "‘", "’")),
    FRENCH("fr", "French", ",", "env.", "\u00A0: ", new HouseStyle.Quotes("«\u00A0", "\u00A0»", "“", "”")),
    GERMAN("de", "German", ",", "ca.", ": ", new HouseStyle.Quotes("„", "“", "‚", "‘")),
    ITALIAN("it", "Italian", ",", "ca.", ": ", new HouseStyle.Quotes("«", "»", "“", "”"));

    private final String code;
    private final String englishName;
    private final String decimalMark;
    private final String circa;
    private final String colon;
    private final HouseStyle.Quotes quotes;

    Language(String code, String englishName, String decimalMark, String circa, String colon, HouseStyle.Quotes quotes) {
        this.code = code;
        this.englishName = englishName;
        this.decimalMark = decimalMark;
        this.circa = circa;
        this.colon = colon;
        this.quotes = quotes;
    }

    /** As catalogue.yaml has it, and as pages are marked (BCP 47): {@code de}. */
    public String code() {
        return code;
    }

    /** For messages. */
    public String englishName() {
        return englishName;
    }

    public String decimalMark() {
        return decimalMark;
    }

    /** Before a figure that is about right. */
    public String circa() {
        return circa;
    }

    /** A colon between words, with the spaces that the language sets around it. */
    public String colon() {
        return colon;
    }

    public HouseStyle.Quotes quotes() {
        return quotes;
    }

    public static Optional<Language> of(String code) {
        return Stream.of(values()).filter(language -> language.code.equals(code)).findFirst();
    }

    public static List<String> codes() {
        return Stream.of(values()).map(Language::code).toList();
    }
}
