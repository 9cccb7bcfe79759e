package exergue.cite;

import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.finding.Place;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Looks a style over: that it is one, that it stands on its own, and that its macros come to an end. Macros that call each
 * other twice over could keep the library busy for years, so the size of each with all it calls is counted first.
 */
final class StyleLook extends DefaultHandler {

    private static final String CSL = "http://purl.org/net/xbiblio/csl";
    private static final int DEEPEST = 100;

    /** Elements that one entry may run through; published styles need some thousands at most. */
    private static final long MOST_STEPS = 200_000;

    /** What a macro, or the list itself, consists of. */
    private static final class Piece {
        private final Map<String, Integer> calls = new LinkedHashMap<>();
        private int elements;
        private Place place;
    }

    private final String path;
    private final Map<String, Piece> macros = new LinkedHashMap<>();
    private final Map<String, Long> sizes = new HashMap<>();
    private final Deque<String> within = new ArrayDeque<>();
    private Piece bibliography;
    private Piece open;
    private Locator locator;
    private Finding fault;
    private int depth;

    StyleLook(String path) {
        this.path = path;
    }

    @Override
    public void setDocumentLocator(Locator locator) {
        this.locator = locator;
    }

    @Override
    public void startElement(String uri, String name, String qualified, Attributes attributes) {
        depth++;
        if (depth == 1) {
            root(uri, name);
        } else if (depth > DEEPEST) {
            said(CiteCodes.STYLE_REFUSED, "The style nests more than " + DEEPEST + " deep.", "Take another style.");
        } else if (name.equals("link") && "independent-parent".equals(attributes.getValue("rel"))) {
            said(CiteCodes.NOT_A_STYLE, "This style says nothing itself; it only refers to the style "
                    + attributes.getValue("href") + ".", "Fetch that style, put it into the folder, and name it in citation-style.");
        } else if (depth == 2 && name.equals("macro")) {
            open = new Piece();
            open.place = here();
            macros.put(String.valueOf(attributes.getValue("name")), open);
        } else if (depth == 2) {
            open = name.equals("bibliography") ? new Piece() : null;
            bibliography = open == null ? bibliography : open;
        }
        if (open != null) {
            open.elements++;
            open.place = open.place == null ? here() : open.place;
            String called = attributes.getValue("macro");
            if (called != null) {
                open.calls.merge(called, 1, Integer::sum);
            }
        }
    }

    @Override
    public void endElement(String uri, String name, String qualified) {
        depth--;
    }

    private void root(String uri, String name) {
        if (!uri.equals(CSL) || !name.equals("style")) {
            said(CiteCodes.NOT_A_STYLE, "The file begins with <" + name + ">, and a citation style begins with <style xmlns=\""
                    + CSL + "\">.", "Name a CSL file in citation-style.");
        }
    }

    private Place here() {
        return locator == null ? Place.ofFile(path) : new Place(path, Math.max(0, locator.getLineNumber()), 0, 0);
    }

    private void said(Code code, String what, String remedy) {
        said(code, here(), what, remedy);
    }

    private void said(Code code, Place place, String what, String remedy) {
        if (fault == null) {
            fault = Finding.of(code, place, "", what, remedy);
        }
    }

    /** What is wrong with the style, once it has been read to its end. */
    Optional<Finding> fault() {
        if (fault == null && bibliography == null) {
            said(CiteCodes.NOT_A_STYLE, Place.ofFile(path), "The style has no <bibliography>: it sets notes, but no list of works.",
                    "Take a style that sets a list of works.");
        }
        if (fault == null && size(bibliography) > MOST_STEPS) {
            said(CiteCodes.STYLE_REFUSED, bibliography.place, "The macros of the style call each other so often that setting one "
                    + "work would take more than " + MOST_STEPS + " steps.", "Take another style.");
        }
        return Optional.ofNullable(fault);
    }

    private long size(Piece piece) {
        long size = piece.elements;
        for (Map.Entry<String, Integer> call : piece.calls.entrySet()) {
            size = Math.min(MOST_STEPS + 1, size + call.getValue() * size(call.getKey(), piece));
        }
        return size;
    }

    private long size(String macro, Piece caller) {
        Piece piece = macros.get(macro);
        if (piece == null) {
            said(CiteCodes.NOT_A_STYLE, caller.place, "The style calls the macro “" + macro + "”, which it does not have.",
                    NearMiss.of(macro, macros.keySet()).map(near -> "Did you mean “" + near + "”?")
                            .orElse("Add the macro, or fetch the style anew."));
            return 0;
        }
        Long known = sizes.get(macro);
        if (known != null) {
            return known;
        }
        if (within.contains(macro) || within.size() > DEEPEST) {
            said(CiteCodes.STYLE_REFUSED, piece.place, "The macro “" + macro + "” calls itself, and would never come to an end.",
                    "Take that call out of it, or take another style.");
            return 0;
        }
        within.push(macro);
        long size = size(piece);
        within.pop();
        sizes.put(macro, size);
        return size;
    }
}
