package exergue.proof;

import exergue.edition.Book;
import exergue.edition.EntryBlock;
import exergue.edition.Part;
import exergue.typeset.Area;
import exergue.typeset.Excerpt;
import exergue.typeset.Sheets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which stretch of the book has to be set to see an entry as it stands on its page. It begins where the last pages had an
 * entry at the head of a page: what stands before that has not changed, so it will stand there again. It goes on
 * for a page after the entry, since what follows decides how a page ends.
 */
final class Stretch {

    /** What is taken after an entry whose neighbours were not in the book before. */
    private static final int AFTER_NEW = 12;

    private final Sheets before;
    private final Map<String, Area> first = new HashMap<>();
    private final Map<String, Integer> last = new HashMap<>();
    private final Map<Integer, Integer> heads = new HashMap<>();

    private Stretch(Sheets before) {
        this.before = before;
        for (Area area : before.areas()) {
            first.putIfAbsent(area.anchor(), area);
            last.merge(area.anchor(), area.page(), Math::max);
            heads.merge(area.page(), area.top(), Math::min);
        }
    }

    /**
     * @param anchor of an entry, a coin or a chapter
     * @param book   as it shall be
     * @param before the whole book as it was set last
     * @return empty if it can only be seen in the whole book
     */
    static Optional<Excerpt> around(String anchor, Book book, Sheets before) {
        Stretch stretch = new Stretch(before);
        return Stream.of(book.front(), book.body(), book.back()).flatMap(List::stream)
                .map(part -> stretch.in(part, anchor)).flatMap(Optional::stream).findFirst();
    }

    private Optional<Excerpt> in(Part part, String anchor) {
        if (!first.containsKey(part.id())) {
            return Optional.empty();
        }
        int opens = first.get(part.id()).page();
        if (part instanceof Part.Text && part.id().equals(anchor)) {
            return Optional.of(Excerpt.whole(part.id(), opens, before.front()));
        }
        if (!(part instanceof Part.Entries entries)) {
            return Optional.empty();
        }
        List<EntryBlock> blocks = entries.blocks();
        for (int at = 0; at < blocks.size(); at++) {
            if (holds(blocks.get(at), anchor)) {
                int from = from(blocks, at);
                int page = from == 0 ? opens : first.get(blocks.get(from).id()).page();
                return Optional.of(new Excerpt(part.id(), from, to(blocks, at), page, before.front()));
            }
        }
        return Optional.empty();
    }

    private static boolean holds(EntryBlock block, String anchor) {
        return block.id().equals(anchor) || block instanceof EntryBlock.Entry entry
                && entry.specimens().stream().anyMatch(coin -> coin.id().equals(anchor));
    }

    /**
     * Not the block itself: if it has become shorter it may move to the page before. Nor one that stands a little below the
     * head of its page, where the space before it was divided between two pages: by itself it would stand higher.
     */
    private int from(List<EntryBlock> blocks, int at) {
        int highest = blocks.stream().filter(EntryBlock.Entry.class::isInstance).map(block -> first.get(block.id()))
                .filter(area -> area != null && opensPage(area)).mapToInt(Area::top).min().orElse(0);
        for (int from = at - 1; from > 0; from--) {
            Area area = first.get(blocks.get(from).id());
            if (area != null && opensPage(area) && area.top() == highest) {
                return from;
            }
        }
        return 0;
    }

    private boolean opensPage(Area area) {
        return area.top() <= heads.get(area.page());
    }

    private int to(List<EntryBlock> blocks, int at) {
        Integer ends = last.get(blocks.get(at).id());
        for (int to = at + 1; ends != null && to < blocks.size(); to++) {
            Area area = first.get(blocks.get(to).id());
            if (area != null && area.page() > ends + 1) {
                return to;
            }
        }
        return ends == null ? Math.min(blocks.size(), at + AFTER_NEW) : blocks.size();
    }
}
