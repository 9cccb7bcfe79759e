package exergue.source.keys;

import exergue.measure.Convention;
import exergue.model.Apparatus;
import exergue.model.Coin;
import exergue.model.Collection;
import exergue.model.FindSpot;
import exergue.model.HouseStyle;
import exergue.model.Mint;
import exergue.model.Ruler;
import exergue.model.Type;
import exergue.model.Written;
import exergue.source.shape.MapOf;
import exergue.source.shape.Texts;
import exergue.source.list.ListPlan;
import exergue.source.shape.Wanted;
import exergue.source.works.WorkEntry;
import java.util.List;
import java.util.Map;

/**
 * One kind of YAML file in the tree.
 *
 * @param name   of its schema: "coin"
 * @param where  path in the tree: {@code house-style.yaml}, or a folder with a slash at its end: {@code coins/}
 * @param about  one sentence for the reference
 * @param wanted what the file holds
 */
public record FileKind<T>(String name, String where, String about, Wanted<T> wanted) {

    public static final FileKind<CatalogueFile> CATALOGUE = new FileKind<>("catalogue", "catalogue.yaml",
            "The catalogue's own file: title page, language, and the order of the parts. The only file that must be there.",
            CatalogueFile.BLOCK);
    public static final FileKind<HouseStyle> HOUSE_STYLE = new FileKind<>("house-style", "house-style.yaml",
            "What the editor has decided: how figures, metals and specimens are printed.", HouseStyleKeys.BLOCK);
    public static final FileKind<Map<String, Written<Convention>>> CONVENTIONS = new FileKind<>("conventions", "conventions.yaml",
            "The measuring conventions: who measured, when, with what and how.", new MapOf<>(ConventionKeys.BLOCK));
    public static final FileKind<Map<String, WorkEntry>> WORKS = new FileKind<>("works", "works.yaml",
            "The works that are cited; and the signs of those in works.json and works.bib.",
            new MapOf<>(ListedKeys.WORK, Texts.WORK));
    public static final FileKind<Map<String, Mint>> MINTS = new FileKind<>("mints", "mints.yaml",
            "The mints, in the order of the book.", new MapOf<>(ListedKeys.MINT));
    public static final FileKind<Map<String, Ruler>> RULERS = new FileKind<>("rulers", "rulers.yaml",
            "The rulers, in their order within a mint.", new MapOf<>(ListedKeys.RULER));
    public static final FileKind<Map<String, FindSpot>> FIND_SPOTS = new FileKind<>("find-spots", "find-spots.yaml",
            "The places where coins were found.", new MapOf<>(ListedKeys.FIND_SPOT));
    public static final FileKind<Map<String, Collection>> COLLECTIONS = new FileKind<>("collections", "collections.yaml",
            "The collections that hold coins.", new MapOf<>(ListedKeys.COLLECTION));
    public static final FileKind<List<Apparatus.See>> INDEX = new FileKind<>("index", "index.yaml",
            "What the indexes have besides the entries: see-references.", ApparatusKeys.INDEX);
    public static final FileKind<Apparatus> FORMER_NUMBERS = new FileKind<>("former-numbers", "former-numbers.yaml",
            "The numbers of an earlier edition, written by the command numbers; the concordance of old and new numbers is made from it.",
            ApparatusKeys.FORMER_NUMBERS);
    public static final FileKind<Type> TYPE = new FileKind<>("type", "types/", "One type, described once; coins point to it.",
            TypeKeys.BLOCK);
    public static final FileKind<Coin> COIN = new FileKind<>("coin", "coins/", "One coin.", CoinKeys.BLOCK);
    /** Where files of lists lie, if they lie in the tree. */
    public static final String LISTS = "lists/";

    /** How a list is read: set up only when somebody asks for it, since few runs do. */
    public static FileKind<ListPlan> list() {
        return ListKeys.FILE;
    }

    /** In the order of the reference. */
    public static List<FileKind<?>> all() {
        return List.of(CATALOGUE, HOUSE_STYLE, CONVENTIONS, WORKS, MINTS, RULERS, FIND_SPOTS, COLLECTIONS, INDEX, FORMER_NUMBERS, TYPE, COIN, list());
    }

    public boolean isFolder() {
        return where.endsWith("/");
    }
}
