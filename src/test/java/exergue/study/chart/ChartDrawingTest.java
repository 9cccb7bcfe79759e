package exergue.study.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A drawing that is not well formed would end the setting of the book; one with opacity would not be PDF/A. */
class ChartDrawingTest {

    private static final String NAME = "Drachms <of> \"A & B\"";

    static Stream<Chart> charts() {
        return Stream.of(histogram(), new Rose(List.of(new Rose.Dial(NAME, "n = 3", Collections.nCopies(12, 0.5), Optional.of(11.9), true),
                        new Rose.Dial(NAME, "n = 0", Collections.nCopies(12, 0.0), Optional.empty(), false))),
                new Scatter("Diameter (mm)", "Weight (g)", ",", List.of(new Scatter.Series(NAME, List.of(new Point(18, 3.87))))));
    }

    private static Histogram histogram() {
        Histogram.Panel panel = new Histogram.Panel(NAME, List.of(2, 0, 5), List.of(new Point(3.8, 1), new Point(3.9, 4)), List.of(3.81, 3.81, 3.99));
        return new Histogram("Weight (g)", 3.8, 0.1, ".", List.of(panel, panel), Optional.of(new Histogram.Mark(4.05, NAME)));
    }

    @ParameterizedTest
    @MethodSource("charts")
    void drawingsAreWellFormedAndPlain(Chart chart) throws Exception {
        String svg = ChartDrawing.svg(chart);
        Document document = parsed(svg);
        assertEquals("svg", document.getDocumentElement().getTagName());
        assertFalse(svg.matches("(?s).*(opacity|mask|filter|<image|NaN|Infinity).*"), svg);
        assertTrue(document.getDocumentElement().getTextContent().contains(NAME), svg);
        assertEquals(NAME, parsed(ChartDrawing.file(chart, NAME)).getElementsByTagName("title").item(0).getTextContent());
    }

    /** The hundredths of a point are as exact as a press is. */
    @Test
    void barsAreAsHighAsTheirCounts() throws Exception {
        NodeList bars = parsed(ChartDrawing.svg(histogram())).getElementsByTagName("rect");
        assertEquals(4, bars.getLength()); // no bar for a count of nought
        assertEquals(2.5, height(bars, 1) / height(bars, 0), 1e-2);
    }

    private static double height(NodeList bars, int index) {
        return Double.parseDouble(((Element) bars.item(index)).getAttribute("height"));
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }
}
