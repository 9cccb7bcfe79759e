package exergue.typeset;

import exergue.edition.Alone;
import exergue.edition.Book;
import exergue.edition.EntryBlock;
import exergue.edition.EntryBlock.Entry;
import exergue.edition.EntryBlock.ReferenceText;
import exergue.edition.EntryBlock.SideText;
import exergue.edition.Part;
import exergue.edition.Specimen;
import exergue.edition.Specimen.Cell;
import exergue.files.MemoryTree;
import exergue.files.Tree;
import exergue.finding.Place;
import exergue.measure.Kind;
import exergue.model.HouseStyle.Rows;
import exergue.model.Inline;
import exergue.model.Inline.Emphasis;
import exergue.model.Inline.Words;
import exergue.model.Phrase;
import exergue.model.Prose;
import exergue.model.TemplateChoice;
import exergue.model.TemplateSet;
import exergue.model.TitleMatter;
import exergue.model.Written;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;

/** An invented book for tests: any number of types and coins, the same for the same numbers. */
final class SampleBook {

    static final Place PLACE = new Place("chapters/introduction.md", 1, 1, 0);
    static final String NNBSP = "\u202F";
    private static final String[] MINTS = {"Arethe", "Lykaia", "Peiris", "Thalara"};
    private static final String[] RULERS = {"Democracy", "Philon, son of Arxes", "Kallistro", "Nikaron II"};
    private static final String[] LEGENDS = {"ΑΡΕΘΑΙΩΝ", "ΛΥΚΑΙΩΝ · ΦΙΛΩΝ", "ΠΕΙΡΙ", "⟦ΒΑϹΙΛΕΩϹ⟧ ΝΙΚΑΡΩΝΟϹ",
            "ΚΑΛ̣ΛΙϹ̣ΤΡΟ", "IMP · NICARON · II"};
    private static final String[] DESCRIPTIONS = {
            "Head of a nymph right, hair in a sakkos, wearing a single-pendant earring; border of dots.",
            "Wolf standing left on an exergual line, forepaw raised over a spear-head; in the field above, a crescent; "
                    + "the whole within a shallow incuse square of which the lower left corner is often unstruck.",
            "Ear of barley with two leaves; to right, monogram and club.",
            "Eagle with closed wings standing left on a thunderbolt."};

    private SampleBook() { }

    static Place place() {
        return PLACE;
    }

    static Setting setting() {
        return setting(tree(), Rows.ALIGNED);
    }

    /** A photograph in JPEG and one, with a transparent ground, in PNG. */
    static Tree tree() {
        return new MemoryTree(Map.of("photographs/obv 3.jpg", picture("jpg", BufferedImage.TYPE_INT_RGB),
                "photographs/rev.png", picture("png", BufferedImage.TYPE_INT_ARGB)));
    }

    private static byte[] picture(String format, int type) {
        BufferedImage image = new BufferedImage(120, 120, type);
        Graphics2D pen = image.createGraphics();
        pen.setColor(type == BufferedImage.TYPE_INT_RGB ? Color.WHITE : new Color(0, 0, 0, 0));
        pen.fillRect(0, 0, 120, 120);
        pen.setColor(Color.GRAY);
        pen.fillOval(10, 10, 100, 100);
        pen.dispose();
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(image, format, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Setting setting(Tree tree, Rows rows) {
        return setting(tree, rows, TemplateChoice.USUAL);
    }

    static Setting setting(TemplateSet set) {
        return setting(tree(), Rows.ALIGNED, new TemplateChoice(set, Optional.empty()));
    }

    static Setting setting(Tree tree, Rows rows, TemplateChoice templates) {
        return new Setting(tree, templates, rows, Map.of(), () -> new Stamp("0123456789abcdef".repeat(4)),
                pages -> { }, Progress.SILENT);
    }

    static Book of(int types, int coins) {
        List<Part> front = List.of(new Part.TitlePage("title"), new Part.Imprint("imprint"),
                new Part.Contents("contents", words("Contents")),
                new Part.Text("preface", words("Preface"), prose(3)));
        List<Part> body = List.of(
                new Part.Text("introduction", words("The coinage of the Arethan league"), chapter()),
                new Part.Entries("catalogue", words("Catalogue"), entries(types, coins)));
        List<Part> back = List.of(new Part.WorksCited("works", words("Works cited"), works()));
        return new Book("en", title(), front, body, back);
    }

    static Written<String> written(String text) {
        return new Written<>(text, PLACE);
    }

    static List<Inline> words(String text) {
        return List.of(new Words(text));
    }

    static TitleMatter title() {
        return new TitleMatter(written("Coins of the Arethan League"),
                Optional.of(written("The excavations at Lykaia and the Thornbury cabinet")),
                List.of(written("E. M. Hallam"), written("T. Varga")), Optional.of(written("Lykaia")),
                Optional.of(written("The League Press")), Optional.of(written("2026")),
                Optional.of(written("Studies from the excavations, 4")),
                Optional.of(new Phrase(words("Places, people, works and coins in this book are all invented."), PLACE)),
                List.of(new Phrase(words("Set in Gentium Book Plus."), PLACE),
                        new Phrase(words("All of it is invented."), PLACE)), written("en"));
    }

    static List<Prose> prose(int paragraphs) {
        List<Prose> prose = new ArrayList<>();
        for (int i = 0; i < paragraphs; i++) {
            prose.add(new Prose.Paragraph(List.of(
                    new Words("The league struck its first silver in the years after the fire at Lykaia, when the "
                            + "sanctuary’s debts had to be paid in coin that the mercenaries of the coast would take. "
                            + "What the older literature calls the “wolf staters” ("),
                    new Emphasis(words("Journal of the League")),
                    new Words(", 1931) are lighter than they look: 8.4–8.6" + NNBSP + "g where they are whole, and "
                            + "their dies were cut by at least two hands, one of them the engraver of the "),
                    new Emphasis(words("tetrobols")),
                    new Words(", whose small, crowded letters are unmistakable. No hoard has yet joined the two "
                            + "groups.")), PLACE));
        }
        return prose;
    }

    private static List<Prose> chapter() {
        List<Prose> blocks = new ArrayList<>(prose(3));
        blocks.add(new Prose.Heading(2, words("The standards"), PLACE));
        blocks.addAll(prose(2));
        blocks.add(new Prose.Table(List.of("left", "right", "right"),
                List.of(words("Denomination"), words("Weight (g)"), words("Dies")),
                List.of(List.of(words("Stater"), words("8.52"), words("14")),
                        List.of(words("Drachm"), words("4.21"), words("31")),
                        List.of(words("Obol"), words("0.68"), words("9"))), PLACE));
        blocks.add(new Prose.Items(false, 1, List.of(
                List.of(new Prose.Paragraph(words("silver, in four denominations;"), PLACE)),
                List.of(new Prose.Paragraph(words("bronze, in two."), PLACE))), PLACE));
        blocks.add(new Prose.Items(true, 3, List.of(
                List.of(new Prose.Paragraph(words("the wolf standing, before 212 BC;"), PLACE)),
                List.of(new Prose.Paragraph(words("the wolf running, after that year, with magistrates’ names which "
                        + "grow longer from die to die until the last fill the whole of the exergue."), PLACE))), PLACE));
        blocks.add(new Prose.Heading(2, words("The order of the issues"), PLACE));
        blocks.addAll(prose(3));
        blocks.add(new Prose.Quotation(prose(1), PLACE));
        blocks.add(new Prose.Paragraph(List.of(new Words("The first count"), footnote(1), new Words(" gave "),
                new Emphasis(List.of(new Words("more dies"), footnote(2))), new Words(", the second fewer."), footnote(3)), PLACE));
        blocks.add(new Prose.Table(List.of("left", "right"), List.of(words("Count"), words("Dies")),
                List.of(List.of(List.of(new Words("Second"), footnote(4)), words("14"))), PLACE));
        return blocks;
    }

    static Inline footnote(int number) {
        return new Inline.Footnote(number, List.of(new Words("Note " + number + ", as in "), new Emphasis(words("Journal of the League")),
                new Words("."), new Inline.LineBreak(), new Inline.Link("#Hallam", words("Hallam"))), PLACE);
    }

    private static List<Part.WorkLine> works() {
        List<Part.WorkLine> works = new ArrayList<>();
        for (String sign : List.of("Hallam", "JL 12", "Varga", "Thornbury")) {
            works.add(new Part.WorkLine(sign, sign, List.of(new Words("E. M. Hallam, "),
                    new Emphasis(words("The silver of the league and its neighbours")),
                    new Words(", in "), new Emphasis(words("Journal of the League")),
                    new Words(", 12 (1931), pp. 14–61."))));
        }
        return works;
    }

    private static List<EntryBlock> entries(int types, int coins) {
        List<EntryBlock> blocks = new ArrayList<>();
        int number = 1;
        String head = "";
        for (int type = 0; type < types; type++) {
            int place = type * MINTS.length / types;
            if (type == 0 || place != (type - 1) * MINTS.length / types) {
                blocks.add(new EntryBlock.MintHeading("mint-" + place, MINTS[place], Optional.empty(), words("")));
                blocks.add(new EntryBlock.RulerHeading("ruler-" + place, RULERS[place],
                        place == 0 ? Optional.empty() : Optional.of("c. 212–198 BC"), List.of()));
                head = MINTS[place] + ", " + RULERS[place];
            }
            if (type % 7 == 0) {
                blocks.add(new EntryBlock.IssueHeading("issue-" + type, "With magistrates’ names, group " + (type + 1)));
            }
            int last = (int) ((long) coins * (type + 1) / types);
            if (types < 100) {
                last = type == 2 ? number + 30 : Math.max(last, number);
            }
            blocks.add(entry(type, number, last, head));
            number = last + 1;
        }
        return blocks;
    }

    private static Entry entry(int type, int first, int last, String head) {
        List<Specimen> specimens = new ArrayList<>();
        for (int number = first; number <= last; number++) {
            specimens.add(coin(number));
        }
        String numbers = first == last ? "" + first : first + "–" + last;
        List<Prose> notes = type % 5 == 1 ? prose(1) : List.of();
        return new Entry("type-" + type, numbers, List.of("Drachm", "AR", "c. 212–208 BC", "reduced league standard"),
                List.of(new SideText("Obv.", Optional.of(LEGENDS[type % 6]), words(DESCRIPTIONS[type % 4])),
                        new SideText("Rev.", type % 3 == 0 ? Optional.empty() : Optional.of(LEGENDS[(type + 1) % 6]),
                                words(DESCRIPTIONS[(type + 1) % 4]))),
                List.of(new ReferenceText("", "Hallam", "" + (14 + type)),
                        new ReferenceText("variant of", "JL 12", "p. 47, no. 3")),
                specimens, notes, head, "Drachm (continued)");
    }

    private static Specimen coin(int number) {
        String weight = number % 11 == 0 ? "–" : number % 6 == 0 ? "3.9" : (number % 9 == 0 ? "1" : "") + "3." + (10 + number % 80);
        String diameter = number % 5 == 0 ? "18 × 17" : "" + (9 + number % 14);
        String sign = number % 8 == 0 ? "†" : number % 13 == 0 ? "°" : "";
        String axis = "" + (1 + number % 12);
        List<Cell> cells = List.of(
                new Cell(Kind.WEIGHT, weight, weight.equals("–") ? "" : "g", NNBSP, weight.equals("–") ? "" : sign, ", "),
                new Cell(Kind.DIAMETER, diameter, "mm", NNBSP, "", ", "),
                new Cell(Kind.AXIS, axis, "h", NNBSP, "", ""));
        StringBuilder line = new StringBuilder();
        cells.forEach(c -> line.append(c.figure()).append(c.unit().isEmpty() ? "" : c.space() + c.unit()).append(c.sign()).append(c.after()));
        List<Inline> remarks = number % 7 == 0
                ? List.of(new Words("Chipped; the same coin as "), new Emphasis(words("Hallam")), new Words(", pl. 4, 12, from the obverse die of no. 3 in a worn state."))
                : number % 8 == 0 ? words("Pierced.") : List.of();
        return new Specimen("lk-" + number, "" + number, cells, line.toString(),
                number % 4 == 0 ? "" : "O" + (1 + number / 3) + "/R" + (1 + number / 2),
                number % 2 == 0 ? "Lykaia, trench C, inv. 19-" + number : "Thornbury " + (1000 + number), remarks,
                List.of(), number < 5 ? Optional.of(photographs(number)) : Optional.empty(), "", alone(number));
    }

    private static Alone alone(int number) {
        return new Alone("Inv. 19-" + number + ", Lykaia, trench C.", "Thornbury\u00A0" + (1000 + number) + ".",
                number % 3 == 0 ? "Bought from a dealer in 1931; Thornbury cabinet." : "",
                number % 4 == 2 ? "As no.\u00A0" + (number - 1) + "." : "",
                List.of(new SideText("Obv.", Optional.of(LEGENDS[number % 6]), words(DESCRIPTIONS[number % 4])),
                        new SideText("Rev.", Optional.empty(), words(DESCRIPTIONS[(number + 1) % 4]))),
                number % 5 == 0 ? words("Rev. legend ΠΕΙ[ΡΙ].") : List.of(), number % 8 == 0 ? words("Pierced.") : List.of(),
                List.of(new ReferenceText("", "Hallam", "" + (14 + number))),
                number % 3 == 0 ? List.of(new ReferenceText("this coin:", "JL 12", "no. 3")) : List.of());
    }

    private static Specimen.Picture photographs(int number) {
        return new Specimen.Picture(Optional.of(face("photographs/obv 3.jpg", "obverse of no. " + number)),
                number == 2 ? Optional.empty() : Optional.of(face("photographs/rev.png", "reverse of no. " + number)),
                number == 3 ? Optional.of("Thornbury cabinet") : Optional.empty(), true, "");
    }

    /** 20 mm wide and high. */
    static Specimen.Face face(String path, String alternative) {
        return new Specimen.Face(path, path, alternative, new BigDecimal("20"), new BigDecimal("20"), "");
    }
}
