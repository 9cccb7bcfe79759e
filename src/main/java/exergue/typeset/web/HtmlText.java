package exergue.typeset.web;

import exergue.edition.HeldTogether;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * A page as HTML text. Soft hyphens, which the printed page needs, are left out: a browser divides words itself, and
 * words that are searched for or copied stay whole. A space that holds two words together becomes a no-break space.
 */
public final class HtmlText {

    private static final Set<String> WITHOUT_END = Set.of("area", "base", "br", "col", "embed", "hr", "img", "input",
            "link", "meta", "source", "track", "wbr");
    /** Their text is not markup; whoever makes it sees to it that it does not end the element. */
    private static final Set<String> AS_IT_IS = Set.of("script", "style");
    private static final String SOFT_HYPHEN = "\u00AD";

    private final StringBuilder text = new StringBuilder("<!DOCTYPE html>\n");

    private HtmlText() { }

    public static String of(Document page) {
        HtmlText html = new HtmlText();
        html.element(page.getDocumentElement());
        return html.text.append('\n').toString();
    }

    private void element(Element element) {
        String name = element.getTagName();
        text.append('<').append(name);
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Node attribute = attributes.item(i);
            if (!attribute.getNodeName().startsWith("xml")) {
                text.append(' ').append(htmlName(name, attribute.getNodeName())).append("=\"")
                        .append(escaped(attribute.getNodeValue()).replace("\"", "&quot;")).append('"');
            }
        }
        text.append('>');
        if (WITHOUT_END.contains(name)) {
            return;
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element nested) {
                element(nested);
            } else if (child.getNodeType() == Node.TEXT_NODE) {
                text.append(AS_IT_IS.contains(name) ? child.getNodeValue()
                        : escaped(HeldTogether.noBreak(child.getNodeValue())));
            }
        }
        text.append("</").append(name).append('>');
    }

    /** What the PDF takes from a drawing's {@code alt}, HTML takes from a label. */
    private static String htmlName(String element, String attribute) {
        return element.equals("svg") && attribute.equals("alt") ? "role=\"img\" aria-label" : attribute;
    }

    private static String escaped(String words) {
        return words.replace(SOFT_HYPHEN, "").replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
