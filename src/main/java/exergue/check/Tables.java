package exergue.check;

import exergue.model.Catalogue;
import exergue.model.Prose;
import java.util.ArrayList;
import java.util.List;

/** Collects the tables that authors have written, in chapters and notes. */
public final class Tables {

    private final List<Prose.Table> found = new ArrayList<>();

    private Tables() { }

    public static List<Prose.Table> in(Catalogue catalogue) {
        Tables all = new Tables();
        catalogue.chapters().values().forEach(chapter -> all.blocks(chapter.blocks()));
        catalogue.types().forEach(type -> all.blocks(type.note()));
        catalogue.coins().forEach(coin -> all.blocks(coin.note()));
        return List.copyOf(all.found);
    }

    private void blocks(List<Prose> blocks) {
        for (Prose block : blocks) {
            if (block instanceof Prose.Table table) {
                found.add(table);
            } else if (block instanceof Prose.Quotation quotation) {
                blocks(quotation.blocks());
            } else if (block instanceof Prose.Items items) {
                items.items().forEach(this::blocks);
            }
        }
    }
}
