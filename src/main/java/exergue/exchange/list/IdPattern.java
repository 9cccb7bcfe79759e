package exergue.exchange.list;

import exergue.source.list.ColumnContent;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The ids of new coins: a pattern with what columns hold in braces, "tm-{inventory number}". */
final class IdPattern {

    private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)}");

    private final String pattern;

    IdPattern(String pattern) {
        this.pattern = pattern;
    }

    /** What stands in braces. */
    List<String> parts() {
        List<String> parts = new ArrayList<>();
        Matcher brace = BRACES.matcher(pattern);
        while (brace.find()) {
            parts.add(brace.group(1).strip());
        }
        return parts;
    }

    /** Empty where the row lacks one of the parts, or nothing of them can stand in an id. */
    Optional<String> of(Map<ColumnContent, List<Taken>> taken) {
        StringBuilder id = new StringBuilder();
        Matcher brace = BRACES.matcher(pattern);
        while (brace.find()) {
            Optional<ColumnContent> content = ColumnContent.of(brace.group(1).strip());
            String part = content.filter(taken::containsKey).map(of -> slug(taken.get(of).get(0).text())).orElse("");
            if (part.isEmpty()) {
                return Optional.empty();
            }
            brace.appendReplacement(id, Matcher.quoteReplacement(part));
        }
        return Optional.of(slug(brace.appendTail(id).toString()));
    }

    /** Small letters a to z, digits, hyphens and full stops between them: accents are dropped, everything else is a hyphen. */
    static String slug(String text) {
        String plain = Normalizer.normalize(text.toLowerCase(Locale.ROOT).replace("ß", "ss").replace("æ", "ae").replace("œ", "oe")
                .replace("ø", "o").replace("ł", "l"), Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
        return plain.replaceAll("[^a-z0-9.]+", "-").replaceAll("[-.]*-[-.]*|\\.{2,}", "-").replaceAll("^[-.]+|[-.]+$", "");
    }
}
