package exergue.typeset;

import exergue.edition.Book;
import exergue.edition.EntryBlock;
import exergue.edition.Part;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.model.Prose;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Looks at the set book as a printer would who is about to print it. */
final class PressCheck {

    /** Pixels an inch at the printed size, as printers' and publishers' guides ask for. */
    static final int PHOTOGRAPH = 300;
    private static final int LINE_ART = 600;
    private static final int RGB = 3;
    /** Points: nearer to the trimmed edge than this it would be taken for a picture that should run over it. */
    private static final float AT_THE_EDGE = 1;
    private static final float MILLIMETRES_A_POINT = 25.4f / 72;
    private static final String BOOK = "catalogue.yaml";

    private final Map<String, Place> written = new HashMap<>();
    /** What entries call the photographs that pictures of this book were made from. */
    private final Map<String, String> photographs = new HashMap<>();
    private final SetPages pages;
    private final List<Finding> findings = new ArrayList<>();

    private PressCheck(Book book, Map<String, Place> coins, SetPages pages) {
        this.pages = pages;
        Stream.of(book.front(), book.body(), book.back()).flatMap(List::stream).forEach(part -> remember(part, coins));
    }

    static Findings look(Book book, Map<String, Place> coins, SetPages pages, List<PlacedPicture> pictures) {
        PressCheck check = new PressCheck(book, coins, pages);
        Map<String, PlacedPicture> coarsest = new LinkedHashMap<>();
        pictures.forEach(picture -> coarsest.merge(picture.path(), picture,
                (a, b) -> a.resolution() <= b.resolution() ? a : b));
        coarsest.values().forEach(check::resolution);
        pictures.stream().filter(picture -> picture.fromEdge() < AT_THE_EDGE).forEach(check::bleed);
        check.colours(coarsest.values().stream().filter(picture -> picture.colours() >= RGB).toList());
        check.sheets();
        return Findings.of(check.findings);
    }

    private void remember(Part part, Map<String, Place> coins) {
        if (part instanceof Part.Text text) {
            text.blocks().forEach(block -> {
                if (block instanceof Prose.Picture picture) {
                    written.putIfAbsent(picture.path(), picture.place());
                }
            });
        } else if (part instanceof Part.Entries entries) {
            entries.blocks().stream().filter(EntryBlock.Entry.class::isInstance).map(EntryBlock.Entry.class::cast)
                    .flatMap(entry -> entry.specimens().stream()).forEach(coin -> coin.picture().ifPresent(picture ->
                            picture.faces().forEach(face -> {
                                written.putIfAbsent(face.path(), coins.getOrDefault(coin.id(), Place.ofFile(face.file())));
                                photographs.put(face.path(), face.file());
                            })));
        }
    }

    private void resolution(PlacedPicture picture) {
        int wanted = picture.isLineArt() ? LINE_ART : PHOTOGRAPH;
        if (picture.resolution() >= wanted) {
            return;
        }
        int millimetres = Math.round(picture.width() * MILLIMETRES_A_POINT);
        int across = (int) Math.ceil(picture.width() * wanted / 72);
        add(PressCodes.LOW_RESOLUTION, picture, capital(name(picture)) + " has " + picture.across() + " pixels for "
                        + millimetres + " mm, that is " + picture.resolution() + " an inch; "
                        + (picture.isLineArt() ? "line art" : "a photograph") + " needs " + wanted + ".",
                "Give the picture with at least " + across + " pixels across, or print it smaller. More pixels made by "
                        + "a program out of the same picture do not help.");
    }

    private String name(PlacedPicture picture) {
        String photograph = photographs.getOrDefault(picture.path(), picture.path());
        return photograph.equals(picture.path()) ? "“" + photograph + "”" : "the coin on “" + photograph + "”";
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private void bleed(PlacedPicture picture) {
        add(PressCodes.NO_BLEED, picture, capital(name(picture)) + " ends at the trimmed edge of page "
                        + pages.folio(picture.page()) + " and has no bleed.",
                "Keep it at least 3 mm away from the edge in the style sheet of your templates.");
    }

    private void colours(List<PlacedPicture> coloured) {
        if (coloured.isEmpty()) {
            return;
        }
        PlacedPicture first = coloured.get(0);
        add(PressCodes.RGB_PICTURES, first, (coloured.size() == 1 ? "One picture is" : coloured.size()
                        + " pictures are") + " in RGB, the first " + name(first) + ".",
                "Ask the printer to convert from sRGB; where the book is printed in black, write “colours: grey” under “pictures” in "
                        + "the house style.");
    }

    private void sheets() {
        int four = lacking(4);
        int eight = lacking(8);
        int sixteen = lacking(16);
        if (sixteen > 0) {
            findings.add(Finding.of(PressCodes.SHEETS, Place.ofFile(BOOK), "",
                    "The book has " + pages.count() + " pages. Sheets of 4, 8 or 16 pages would leave " + four + ", "
                            + eight + " or " + sixteen + " pages blank at the end.",
                    "Ask the printer which sheets are used, and whether blank pages at the end may stay."));
        }
    }

    private int lacking(int sheet) {
        return (sheet - pages.count() % sheet) % sheet;
    }

    private void add(Code code, PlacedPicture picture, String what, String remedy) {
        Place place = written.getOrDefault(picture.path(), Place.ofFile(picture.path()));
        findings.add(Finding.of(code, place, "", what, remedy));
    }
}
