package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.PrintedPictures.Printed;
import exergue.photo.print.PaintedCoin;
import exergue.photo.print.PicturedCatalogue;
import exergue.typeset.VeraPdf;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The finished book is measured as with callipers and ruler: positions and pixels are read back from the PDF. */
class OnPaperTest {

    private static final Color METAL = new Color(120, 112, 96);
    private static final Color GROUND = new Color(238, 238, 236);
    private static final int METAL_GREY = 112;

    /** @param tenths of a millimetre; @param oval second axis as per cent of the first */
    record Flan(int tenths, int pixels, int oval, int degrees) {

        Shape shape(boolean reverse) {
            return PaintedCoin.ellipse(pixels * 0.65, pixels * 0.65, pixels, pixels * oval / 100.0, reverse ? 180 - degrees : degrees);
        }

        byte[] photograph(boolean reverse) {
            int side = (int) (pixels * 1.3);
            return new PaintedCoin(side, side, GROUND).metal(METAL).coin(shape(reverse)).jpeg();
        }
    }

    @Provide
    static Arbitrary<Flan> flans() {
        return Combinators.combine(Arbitraries.integers().between(80, 340), Arbitraries.integers().between(260, 380),
                Arbitraries.integers().between(75, 100), Arbitraries.integers().between(0, 179)).as(Flan::new);
    }

    private static byte[] set(PicturedCatalogue source) throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Exergue.Made made = Exergue.typeset(Exergue.check(source.tree(), Progress.SILENT), pdf, Progress.SILENT);
        assertTrue(made.publication().isPresent(), () -> made.findings().all().toString());
        return pdf.toByteArray();
    }

    private static PicturedCatalogue source(List<Flan> flans, String direction) {
        PicturedCatalogue source = new PicturedCatalogue().measured(direction);
        for (int i = 0; i < flans.size(); i++) {
            String id = "lk-" + (i + 1);
            source.file("p/" + id + "-o.jpg", flans.get(i).photograph(false)).file("p/" + id + "-r.jpg", flans.get(i).photograph(true))
                    .coin(id, String.format(Locale.ROOT, "%.1f mm", flans.get(i).tenths() / 10.0),
                            "obverse: p/" + id + "-o.jpg\nreverse: p/" + id + "-r.jpg");
        }
        return source;
    }

    @Property(tries = 4)
    void everyCoinMeasuresWhatItsEntrySaysAndStandsWhereItShould(
            @ForAll @Size(min = 1, max = 9) List<@From("flans") Flan> flans, @ForAll boolean upright) throws IOException {
        List<Printed> printed = PrintedPictures.of(set(source(flans, upright ? "top to bottom" : "greatest")));
        assertEquals(2 * flans.size(), printed.size());
        for (int i = 0; i < flans.size(); i++) {
            Printed obverse = printed.get(2 * i);
            Printed reverse = printed.get(2 * i + 1);
            double recorded = flans.get(i).tenths() / 10.0;
            assertEquals(recorded, upright ? extent(obverse, 0) : greatest(obverse), 0.1, flans.get(i)::toString);
            assertEquals(greatest(obverse), greatest(reverse), 0.12, flans.get(i)::toString);
            assertEquals(obverse.place().getCenterY(), reverse.place().getCenterY(), 0.05);
            assertEquals(1.5, reverse.place().getMinX() - obverse.place().getMaxX(), 0.05);
        }
        apart(printed);
        inOrder(printed);
    }

    /** An oval flan whose axis is a quarter of a turn off: one side stands upright, the other lies. */
    @Test
    void sidesOfDifferentHeightStandWithTheirMiddlesOnOneLine() throws IOException {
        for (String parts : List.of("{front: [title], body: [catalogue], back: [plates]}", "{front: [title], body: [catalogue]}")) {
            for (String set : List.of("corpus", "collection", "excavation")) {
                PicturedCatalogue source = new PicturedCatalogue().measured("greatest")
                        .text("catalogue.yaml", "title: Coins\nlanguage: en\ntemplate-set: " + set + "\nparts: " + parts + "\n")
                        .file("o.jpg", new Flan(200, 300, 75, 0).photograph(false)).file("r.jpg", new Flan(200, 300, 75, 90).photograph(true))
                        .coin("lk-1", "20.0 mm", "obverse: o.jpg\nreverse: r.jpg");
                List<Printed> printed = PrintedPictures.of(set(source));
                assertFalse(printed.isEmpty(), set);
                for (int i = 0; i < printed.size(); i += 2) {
                    assertTrue(printed.get(i).place().getHeight() > printed.get(i + 1).place().getHeight() + 4);
                    assertEquals(printed.get(i).place().getCenterY(), printed.get(i + 1).place().getCenterY(), 0.05, set + parts);
                }
            }
        }
    }

    @Test
    void coinsOnPlatesAndBesideEntriesAreEmbeddedOnceAndToTheStandards() throws Exception {
        for (String set : List.of("corpus", "collection")) {
            PicturedCatalogue source = source(List.of(new Flan(180, 300, 90, 20), new Flan(330, 380, 100, 0)), "greatest");
            source.text("catalogue.yaml", """
                    title: Coins
                    language: en
                    template-set: %s
                    parts: {front: [title], body: [catalogue], back: [plates]}
                    """.replace("%s", set)).text("house-style.yaml", "pictures: {scale-bar: 50 mm, colours: grey}\n");
            byte[] pdf = set(source);
            assertEquals(set.equals("corpus") ? 4 : 8, PrintedPictures.of(pdf).size());
            assertEquals(4, embedded(pdf));
            assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFA_3_U));
            assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFUA_1));
        }
    }

    private static long embedded(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getDocument().getObjectsByType(COSName.XOBJECT).stream()
                    .filter(object -> object.getObject() instanceof COSStream stream
                            && COSName.IMAGE.equals(stream.getCOSName(COSName.SUBTYPE))).count();
        }
    }

    private static void apart(List<Printed> printed) {
        for (Printed one : printed) {
            Rectangle2D text = new Rectangle2D.Double(21.9, 24, 158.2, 226);
            Rectangle2D shifted = one.page() % 2 == 0 ? text : new Rectangle2D.Double(29.9, 24, 158.2, 226);
            assertTrue(shifted.contains(one.place()), one.place()::toString);
            for (Printed other : printed) {
                assertFalse(one != other && one.page() == other.page() && one.place().intersects(other.place()));
            }
        }
    }

    /** As one reads: to the right, then down, then on the next plate. */
    private static void inOrder(List<Printed> printed) {
        for (int i = 1; i < printed.size(); i++) {
            Printed before = printed.get(i - 1);
            Printed after = printed.get(i);
            boolean right = after.place().getMinX() > before.place().getMaxX()
                    && Math.abs(after.place().getCenterY() - before.place().getCenterY()) < 0.1;
            boolean below = after.place().getMinY() > before.place().getMaxY();
            assertTrue(after.page() > before.page() || after.page() == before.page() && (right || below));
        }
    }

    /** In mm along a line of this direction, degrees clockwise from upright. */
    private static double extent(Printed printed, double degrees) {
        double most = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (Point2D place : edge(printed)) {
            double along = place.getX() * Math.sin(Math.toRadians(degrees)) - place.getY() * Math.cos(Math.toRadians(degrees));
            most = Math.max(most, along);
            least = Math.min(least, along);
        }
        return (most - least) * printed.mmPerPixel();
    }

    private static double greatest(Printed printed) {
        double greatest = 0;
        for (int degrees = 0; degrees < 180; degrees++) {
            greatest = Math.max(greatest, extent(printed, degrees));
        }
        return greatest;
    }

    /** Where the grey is half of the way from paper to metal, along every row and every column. */
    private static List<Point2D> edge(Printed printed) {
        List<Point2D> edge = new ArrayList<>();
        for (int y = 0; y < printed.image().getHeight(); y++) {
            for (int x = 1; x < printed.image().getWidth(); x++) {
                double crossing = crossing(covered(printed, x - 1, y), covered(printed, x, y));
                if (crossing >= 0) {
                    edge.add(new Point2D.Double(x - 0.5 + crossing, y + 0.5));
                }
            }
        }
        for (int y = 1; y < printed.image().getHeight(); y++) {
            for (int x = 0; x < printed.image().getWidth(); x++) {
                double crossing = crossing(covered(printed, x, y - 1), covered(printed, x, y));
                if (crossing >= 0) {
                    edge.add(new Point2D.Double(x + 0.5, y - 0.5 + crossing));
                }
            }
        }
        return edge;
    }

    /** Which part of the way from one middle of a pixel to the next it is to where half is covered; below 0 if that is nowhere. */
    private static double crossing(double one, double next) {
        return one < 0.5 == next < 0.5 ? -1 : (0.5 - one) / (next - one);
    }

    private static double covered(Printed printed, int x, int y) {
        int rgb = printed.image().getRGB(x, y);
        int grey = ((rgb >> 16 & 0xFF) + (rgb >> 8 & 0xFF) + (rgb & 0xFF)) / 3;
        return (255 - grey) / (255.0 - METAL_GREY);
    }
}
