package exergue.source.works;

import exergue.model.WorkItem.Person;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Names as BibTeX writes them: "First von Last", "von Last, First", "von Last, Jr, First", joined by "and"; what is wholly
 * in braces is a body. After Patashnik, BibTeXing (1988), section 4.
 */
final class BibNames {

    private BibNames() { }

    /** @param words LaTeX to the letters that are meant */
    static List<Person> read(String field, UnaryOperator<String> words) {
        List<Person> people = new ArrayList<>();
        for (String name : split(field, BibNames::isAnd)) {
            if (!name.isBlank() && !name.strip().equals("others")) {
                people.add(person(name.strip(), words));
            }
        }
        return List.copyOf(people);
    }

    private static Person person(String name, UnaryOperator<String> words) {
        if (name.startsWith("{") && closing(name, 0) == name.length() - 1) {
            return Person.body(words.apply(name));
        }
        List<String> parts = split(name, (text, at) -> text.charAt(at) == ',' ? 1 : 0);
        if (parts.size() == 1) {
            return plain(split(name, BibNames::isSpace), words);
        }
        List<String> last = split(parts.get(0).strip(), BibNames::isSpace);
        int von = 0;
        while (von < last.size() - 1 && isSmall(last.get(von))) {
            von++;
        }
        String suffix = parts.size() > 2 ? words.apply(parts.get(1)) : "";
        return new Person(joined(last.subList(von, last.size()), words), words.apply(parts.get(parts.size() - 1)),
                joined(last.subList(0, von), words), suffix, "");
    }

    /** First names up to the first word in small letters; the last word, and what follows the small ones, is the family name. */
    private static Person plain(List<String> all, UnaryOperator<String> words) {
        int from = 0;
        while (from < all.size() - 1 && !isSmall(all.get(from))) {
            from++;
        }
        int to = from;
        while (to < all.size() - 1 && isSmall(all.get(to))) {
            to++;
        }
        String family = joined(all.subList(to, all.size()), words);
        String given = joined(all.subList(0, from), words);
        return given.isEmpty() && to == 0 ? Person.body(family)
                : new Person(family, given, joined(all.subList(from, to), words), "", "");
    }

    private static String joined(List<String> words, UnaryOperator<String> reader) {
        return reader.apply(words.stream().collect(Collectors.joining(" ")));
    }

    private static boolean isSmall(String word) {
        return word.codePoints().filter(Character::isLetter).findFirst().stream().anyMatch(Character::isLowerCase)
                && !word.startsWith("{");
    }

    /** How long the mark is that divides at this place; 0 for none. */
    private interface Divider {
        int length(String text, int at);
    }

    private static int isSpace(String text, int at) {
        return Character.isWhitespace(text.charAt(at)) || text.charAt(at) == '~' ? 1 : 0;
    }

    private static int isAnd(String text, int at) {
        return text.startsWith("and", at) && at > 0 && isSpace(text, at - 1) > 0 && at + 3 < text.length()
                && isSpace(text, at + 3) > 0 ? 3 : 0;
    }

    /** What stands between dividers outside all braces; spaces divide only where something stands between them. */
    private static List<String> split(String text, Divider divider) {
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        int depth = 0;
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
            int length = depth == 0 ? divider.length(text, at) : 0;
            if (length > 0) {
                parts.add(part.toString());
                part.setLength(0);
                at += length - 1;
            } else {
                part.append(c);
            }
        }
        parts.add(part.toString());
        parts.removeIf(String::isBlank);
        return parts.isEmpty() ? List.of("") : parts;
    }

    private static int closing(String text, int open) {
        int depth = 0;
        for (int at = open; at < text.length(); at++) {
            depth += text.charAt(at) == '{' ? 1 : text.charAt(at) == '}' ? -1 : 0;
            if (depth == 0) {
                return at;
            }
        }
        return -1;
    }
}
