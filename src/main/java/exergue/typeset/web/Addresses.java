package exergue.typeset.web;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Where in the folder each anchor of the book is, and how one page of it names another. */
public final class Addresses {

    private static final String UP = "../";

    /** @param fragment empty for a page as a whole */
    private record Target(String file, String fragment) { }

    private final Map<String, Target> targets = new HashMap<>();

    /** The anchor has a page of its own. */
    public void addPage(String anchor, String file) {
        targets.putIfAbsent(anchor, new Target(file, ""));
    }

    /** The anchor is the id of an element of this page; nothing changes if it has a place already. */
    public void addElement(String anchor, String file) {
        targets.putIfAbsent(anchor, new Target(file, anchor));
    }

    /** The address of an anchor as a link on this page has it; empty if the book has no such anchor. */
    public Optional<String> ofAnchor(String anchor, String fromFile) {
        return Optional.ofNullable(targets.get(anchor)).map(target -> {
            String fragment = target.fragment().isEmpty() ? "" : "#" + encoded(target.fragment());
            return target.file().equals(fromFile) && !fragment.isEmpty() ? fragment
                    : relative(target.file(), fromFile) + fragment;
        });
    }

    /** The address of a file of the folder as a page of it has it: as many steps up as the page lies deep. */
    public static String relative(String file, String fromFile) {
        int common = 0;
        for (int slash = file.indexOf('/'); slash >= 0 && fromFile.startsWith(file.substring(0, slash + 1));
                slash = file.indexOf('/', slash + 1)) {
            common = slash + 1;
        }
        long up = fromFile.substring(common).chars().filter(letter -> letter == '/').count();
        return UP.repeat((int) up) + encoded(file.substring(common));
    }

    private static String encoded(String path) {
        try {
            return new URI(null, null, "/" + path, null).toASCIIString().substring(1);
        } catch (URISyntaxException e) {
            throw new IllegalStateException("any path can be written as an address: " + path, e);
        }
    }
}
