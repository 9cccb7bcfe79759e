package exergue.cite;

import de.undercouch.citeproc.csl.CSLType;

/** Kinds of works; one that CSL does not know is a document. */
final class CslTypes {

    private CslTypes() { }

    static String of(String type) {
        for (CSLType known : CSLType.values()) {
            if (known.toString().equals(type)) {
                return type;
            }
        }
        return "document";
    }
}
