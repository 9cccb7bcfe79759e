package exergue.cite;

import de.undercouch.citeproc.DefaultLocaleProvider;
import de.undercouch.citeproc.LocaleProvider;
import exergue.model.HouseStyle.Quotes;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words a style leaves to the language of the book ("edited by", "pp."), from the locales of the CSL project; with the
 * house's quotation marks, so that titles stand in the same ones as everything else.
 */
final class Locales implements LocaleProvider {

    private static final Map<String, String> NAMES = Map.of("en", "en-GB", "fr", "fr-FR", "de", "de-DE", "it", "it-IT");
    private static final Pattern QUOTE = Pattern.compile(
            "(<term name=\"((?:open|close)(?:-inner)?-quote)\">)[^<]*(</term>)");

    private final String language;
    private final Quotes quotes;
    private final DefaultLocaleProvider library = new DefaultLocaleProvider();

    /** @param language of the book: "en" */
    Locales(String language, Quotes quotes) {
        this.language = language;
        this.quotes = quotes;
    }

    String language() {
        return language;
    }

    /** What the CSL project calls the language. */
    String name() {
        return NAMES.getOrDefault(language, language);
    }

    /** Only the book's own: each of the project's locales is whole, so what the library would merge with it is not read. */
    @Override
    public String retrieveLocale(String name) {
        if (!name.equals(name())) {
            return null;
        }
        Matcher quote = QUOTE.matcher(library.retrieveLocale(name));
        return quote.replaceAll(found -> Matcher.quoteReplacement(found.group(1) + mark(found.group(2)) + found.group(3)));
    }

    private String mark(String which) {
        String mark = switch (which) {
            case "open-quote" -> quotes.open();
            case "close-quote" -> quotes.close();
            case "open-inner-quote" -> quotes.innerOpen();
            default -> quotes.innerClose();
        };
        return mark.replace("&", "&amp;").replace("<", "&lt;");
    }
}
