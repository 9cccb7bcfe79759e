package exergue.typeset;

import exergue.typeset.web.Addresses;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The addresses of one page made relative: {@code #anchor} leads to wherever the folder has it, {@code web:/file} to a
 * file of the folder, {@code tree:/path} to the copy of a picture. A link to an anchor that the book does not have
 * becomes plain words.
 */
final class WebLinks {

    static final String PICTURES = "pictures/";
    private static final String FOLDER = "web:/";

    private final Addresses addresses;
    private final String file;
    private final Set<String> pictures;

    /** @param pictures is told which files of the source the page shows */
    WebLinks(Addresses addresses, String file, Set<String> pictures) {
        this.addresses = addresses;
        this.file = file;
        this.pictures = pictures;
    }

    void resolve(Element element) {
        for (String name : new String[] {"href", "src"}) {
            if (element.hasAttribute(name)) {
                String address = resolved(element.getAttribute(name));
                if (address.isEmpty()) {
                    element.removeAttribute(name);
                } else {
                    element.setAttribute(name, address);
                }
            }
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element nested) {
                resolve(nested);
            }
        }
    }

    private String resolved(String address) {
        if (address.startsWith("#")) {
            return addresses.ofAnchor(address.substring(1), file).orElse("");
        }
        if (address.startsWith(FOLDER)) {
            return Addresses.relative(address.substring(FOLDER.length()), file);
        }
        if (address.startsWith(TreeResources.TREE + ":")) {
            String path = TreeResources.pathOf(address);
            pictures.add(path);
            return Addresses.relative(PICTURES + path, file);
        }
        return address;
    }
}
