package exergue.check;

import exergue.model.Caption;
import exergue.model.Catalogue;
import exergue.model.Chapter;
import exergue.model.FindTable;
import exergue.model.Prose;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** Collects the captions of all tables and figures of the chapters that the book prints. */
public final class Captions {

    private final List<Caption> found = new ArrayList<>();

    private Captions() { }

    public static List<Caption> in(Catalogue catalogue) {
        Captions all = new Captions();
        catalogue.chapters().values().stream()
                .filter(chapter -> catalogue.plan().has(chapter.path()) || isMethods(chapter, catalogue))
                .forEach(chapter -> all.blocks(chapter.blocks()));
        return List.copyOf(all.found);
    }

    /** The ids that texts can refer to, with those of find tables. */
    public static List<Written<String>> ids(Caption.Kind kind, Catalogue catalogue) {
        List<Written<String>> ids = new ArrayList<>(in(catalogue).stream().filter(caption -> caption.kind() == kind)
                .flatMap(caption -> caption.id().stream()).toList());
        if (kind == Caption.Kind.TABLE) {
            catalogue.findSpots().values().forEach(spot -> FindTable.of(spot, catalogue).forEach(table -> ids.add(table.id(spot))));
        }
        return List.copyOf(ids);
    }

    private static boolean isMethods(Chapter chapter, Catalogue catalogue) {
        return chapter.path().equals(Chapter.METHODS) && catalogue.plan().has("methods");
    }

    private void blocks(List<Prose> blocks) {
        for (Prose block : blocks) {
            if (block instanceof Prose.Captioned captioned) {
                captioned.caption().ifPresent(found::add);
            } else if (block instanceof Prose.Quotation quotation) {
                blocks(quotation.blocks());
            } else if (block instanceof Prose.Items items) {
                items.items().forEach(this::blocks);
            }
        }
    }
}
