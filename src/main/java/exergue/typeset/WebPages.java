package exergue.typeset;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * The book taken apart into pages for a browser: a first page with title and contents, one for each part, one for each
 * mint of the catalogue, one for each coin.
 */
final class WebPages {

    static final String FIRST = "index.html";
    private static final String ENDING = ".html";

    /** @param values what the template sees */
    record WebPage(String file, String anchor, Map<String, Object> values) { }

    private final List<WebPage> pages = new ArrayList<>();
    private final List<WebPage> coins = new ArrayList<>();
    private final Set<String> taken = new HashSet<>(Set.of(FIRST));

    private WebPages() { }

    /** @param book values as {@code book.ftlh} sees them */
    static List<WebPage> of(Map<String, Object> book) {
        WebPages web = new WebPages();
        web.add(FIRST, "", new LinkedHashMap<>(Map.of("kind", "first")));
        for (String place : List.of("front", "body")) {
            for (Map<String, Object> part : maps(book.get(place))) {
                web.part(part);
            }
        }
        web.connect();
        web.pages.addAll(web.coins);
        return web.pages;
    }

    private void part(Map<String, Object> part) {
        String kind = part.get("kind").toString();
        if (kind.equals("catalogue")) {
            catalogue(part);
        } else if (!Set.of("title", "imprint", "contents").contains(kind)) {
            String anchor = part.get("anchor").toString();
            add(free(name(anchor)), anchor, page("part", part, part.get("plainHeading")));
        }
    }

    /** A chapter's page is named after its file, without folder and ending. */
    private static String name(String anchor) {
        return anchor.replaceFirst("^part-", "").replaceFirst("^chapters-", "").replaceFirst("-md$", "");
    }

    private void catalogue(Map<String, Object> part) {
        List<Map<String, Object>> loose = new ArrayList<>();
        List<Map<String, Object>> mints = new ArrayList<>();
        String anchor = part.get("anchor").toString();
        Map<String, Object> common = new LinkedHashMap<>(part);
        common.keySet().retainAll(Set.of("heading", "columns", "hasDies"));
        Map<String, Object> overview = page("catalogue", common, part.get("plainHeading"));
        add(free(name(anchor)), anchor, overview);
        List<Map<String, Object>> here = loose;
        for (Map<String, Object> block : maps(part.get("blocks"))) {
            if ("mint".equals(block.get("kind"))) {
                here = new ArrayList<>();
                Map<String, Object> mint = page("mint", common, block.get("name"));
                mint.put("mint", block);
                mint.put("blocks", here);
                mint.put("mintAnchor", block.get("anchor"));
                mints.add(mint);
                add(free("mints/" + block.get("anchor").toString().replaceFirst("^mint\\.", "")),
                        block.get("anchor").toString(), mint);
            } else {
                here.add(block);
            }
        }
        overview.put("blocks", loose);
        overview.put("mints", mints);
        entries(loose, Map.of());
        mints.forEach(mint -> entries(maps(mint.get("blocks")), maps(List.of(mint.get("mint"))).get(0)));
    }

    /** Gives every entry the level of its heading on the page, and every coin a page. */
    private void entries(List<Map<String, Object>> blocks, Map<String, Object> mint) {
        Map<String, Object> ruler = Map.of();
        int level = 1;
        for (Map<String, Object> block : blocks) {
            if (!"entry".equals(block.get("kind"))) {
                ruler = "ruler".equals(block.get("kind")) ? block : ruler;
                level = "ruler".equals(block.get("kind")) ? 2 : Math.min(level + 1, 3);
                block.put("webLevel", level);
                level = "ruler".equals(block.get("kind")) ? 2 : level - 1;
                continue;
            }
            block.put("webLevel", Math.min(level + 1, 4));
            for (Map<String, Object> coin : maps(block.get("specimens"))) {
                coin(coin, block, mint, ruler);
            }
        }
    }

    private void coin(Map<String, Object> coin, Map<String, Object> entry, Map<String, Object> mint,
                      Map<String, Object> ruler) {
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("kind", "coin");
        page.put("coin", coin);
        page.put("entry", entry);
        page.put("mint", mint);
        page.put("ruler", ruler);
        page.put("heading", coin.get("number"));
        String anchor = coin.get("anchor").toString();
        coins.add(new WebPage(free("coins/" + anchor), anchor, page));
    }

    private static Map<String, Object> page(String kind, Map<String, Object> part, Object heading) {
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("kind", kind);
        page.put("part", part);
        page.put("heading", heading);
        return page;
    }

    /** Two names that differ only in capitals are one file on some disks. */
    private String free(String name) {
        String file = name + ENDING;
        for (int i = 2; !taken.add(file.toLowerCase(Locale.ROOT)); i++) {
            file = name + "-" + i + ENDING;
        }
        return file;
    }

    private void add(String file, String anchor, Map<String, Object> values) {
        pages.add(new WebPage(file, anchor, values));
    }

    /** Each page names the one before it and the one after it of its kind. */
    private void connect() {
        connect(pages);
        connect(coins);
    }

    private static void connect(List<WebPage> row) {
        for (int i = 1; i < row.size(); i++) {
            row.get(i).values().put("before", neighbour(row.get(i - 1)));
            row.get(i - 1).values().put("after", neighbour(row.get(i)));
        }
    }

    private static Map<String, Object> neighbour(WebPage page) {
        return Map.of("file", page.file(), "heading", page.values().getOrDefault("heading", ""));
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> maps(Object list) {
        return (List<Map<String, Object>>) list;
    }
}
