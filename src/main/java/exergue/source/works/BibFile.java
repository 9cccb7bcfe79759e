package exergue.source.works;

import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Written;
import exergue.source.text.Notebook;
import exergue.source.text.SourceText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A BibTeX file to its entries, with places. Written here because the library's reader keeps no places. The grammar is
 * that of Patashnik, BibTeXing (1988), and of The BibTeX format description that goes with it: what stands between
 * entries is a comment, texts are in braces or quotation marks, {@code #} joins them, {@code @string} names them.
 * After a fault the reading goes on at the next line that begins with @.
 */
final class BibFile {

    private static final Pattern NAME = Pattern.compile("[^\\s{}(),=\"#%@]+");
    private static final Pattern KEY = Pattern.compile("[^\\s{},]+");
    private static final Pattern NEXT = Pattern.compile("(?m)^\\s*@");
    private static final String[] MONTHS = {"jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"};

    /** A fault at a place of the file; ends one entry, not the file. */
    private static final class Fault extends Exception {
        private static final long serialVersionUID = 1;
        private final transient Finding finding;

        Fault(Finding finding) {
            super(null, null, false, false);
            this.finding = finding;
        }
    }

    private final SourceText source;
    private final String text;
    private final Map<String, String> strings = new HashMap<>();
    private final List<BibEntry> entries = new ArrayList<>();
    private int at;

    private BibFile(SourceText source) {
        this.source = source;
        this.text = source.text();
        for (int i = 0; i < MONTHS.length; i++) {
            strings.put(MONTHS[i], String.valueOf(i + 1));
        }
    }

    static List<BibEntry> read(SourceText source, Notebook notebook) {
        BibFile file = new BibFile(source);
        while (file.toNextEntry()) {
            int start = file.at;
            try {
                file.entry();
            } catch (Fault fault) {
                notebook.add(fault.finding);
                Matcher next = NEXT.matcher(file.text);
                file.at = next.find(Math.min(file.text.length(), start + 1)) ? next.end() - 1 : file.text.length();
            }
        }
        return file.entries;
    }

    private boolean toNextEntry() {
        int next = text.indexOf('@', at);
        at = next < 0 ? text.length() : next;
        return next >= 0;
    }

    private void entry() throws Fault {
        int start = at++;
        String kind = word(NAME, "After @ the kind of work is wanted, such as @book or @article.").toLowerCase(Locale.ROOT);
        space();
        if (kind.equals("comment")) {
            return;
        }
        char open = peek();
        if (open != '{' && open != '(') {
            throw fault(start, "After “@" + kind + "” an opening brace { is wanted.", "Write @" + kind
                    + "{ and the key of the work; or, if this is not a work, take away the @.");
        }
        at++;
        char close = open == '{' ? '}' : ')';
        space();
        if (kind.equals("preamble")) {
            value(start);
        } else if (kind.equals("string")) {
            fields(start, close, kind).forEach((name, value) -> strings.put(name, value.value()));
        } else {
            int key = at;
            String id = word(KEY, "This @" + kind + " has no key, the id by which references name it.");
            Written<String> written = new Written<>(source.composed(id), source.place(key, id.length()));
            space();
            if (peek() == ',') {
                at++;
            }
            entries.add(new BibEntry(kind, written, fields(start, close, id), source.place(start, kind.length() + 1)));
        }
        space();
        expect(close, start, kind);
    }

    private Map<String, Written<String>> fields(int start, char close, String what) throws Fault {
        Map<String, Written<String>> fields = new LinkedHashMap<>();
        space();
        while (peek() != close) {
            if (at >= text.length()) {
                throw unclosed(start, what);
            }
            String name = word(NAME, "Here the name of a field is wanted, such as title or year.");
            space();
            expect('=', start, name);
            space();
            int from = at;
            String value = source.composed(value(start));
            fields.putIfAbsent(name.toLowerCase(Locale.ROOT), new Written<>(value, source.place(from, at - from)));
            space();
            if (peek() == ',') {
                at++;
                space();
            } else if (peek() != close) {
                throw at >= text.length() ? unclosed(start, what)
                        : fault(at, "After the field “" + name + "” of “" + what + "” a comma is wanted, or the closing brace.",
                        "Put a comma after “" + name + " = …”; and see that the braces within it come in pairs.");
            }
        }
        return fields;
    }

    private String value(int start) throws Fault {
        StringBuilder whole = new StringBuilder();
        do {
            space();
            char c = peek();
            if (c == '{' || c == '"') {
                whole.append(quoted(start));
            } else {
                int from = at;
                String word = word(NAME, "Here a text in braces is wanted, or a number.");
                if (!word.matches("[0-9]+") && !strings.containsKey(word.toLowerCase(Locale.ROOT))) {
                    throw fault(from, "The word “" + word + "” stands here without braces, and no @string says what it is.",
                            "Put the text in braces: {" + word + "}.");
                }
                whole.append(strings.getOrDefault(word.toLowerCase(Locale.ROOT), word));
            }
            space();
        } while (peek() == '#' && at++ >= 0);
        return whole.toString();
    }

    /** A text in braces or quotation marks; braces within it come in pairs. */
    private String quoted(int start) throws Fault {
        char close = peek() == '{' ? '}' : '"';
        int from = ++at;
        int depth = 0;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '\\') {
                at++;
            } else if (c == close && depth == 0) {
                return text.substring(from, at++);
            } else if (c == '{') {
                depth++;
            } else if (c == '}') {
                depth--;
            }
            at++;
        }
        throw unclosed(from - 1, close == '}' ? "{" : "\"");
    }

    private String word(Pattern pattern, String what) throws Fault {
        Matcher word = pattern.matcher(text).region(at, text.length());
        if (!word.lookingAt()) {
            throw fault(at, what, "A work is written so: @book{hallam, author = {R. Hallam}, title = {Coins of the Coast}, year = 1931}.");
        }
        at = word.end();
        return word.group();
    }

    private void expect(char sign, int start, String after) throws Fault {
        if (at >= text.length()) {
            throw unclosed(start, after);
        }
        if (peek() != sign) {
            throw fault(at, "After “" + after + "” the sign " + sign + " is wanted.", "Write it: "
                    + (sign == '=' ? after + " = {…}" : String.valueOf(sign)) + ".");
        }
        at++;
    }

    private char peek() {
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private void space() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private Fault unclosed(int from, String what) {
        return fault(from, what.length() == 1 ? "The " + what + " that opens here is never closed."
                : "The entry “" + what + "” that begins here is never closed.",
                "Look for a brace or quotation mark that is missing in it; each { needs its }.");
    }

    private Fault fault(int where, String what, String remedy) {
        int here = Math.min(where, Math.max(0, text.length() - 1));
        Place place = source.place(here, 1);
        return new Fault(Finding.of(WorksCodes.NOT_BIBTEX, place, "", what, remedy));
    }
}
