package exergue.cli;

import exergue.model.Coin;
import exergue.photo.Annotation;
import exergue.photo.AxisFromOutlines;
import exergue.photo.Caliper;
import exergue.photo.Comparison;
import exergue.photo.DiameterLine;
import exergue.photo.Gauged;
import exergue.photo.Outline;
import exergue.photo.Outlined;
import exergue.photo.PictureScale;
import exergue.photo.ReadPicture;
import exergue.photo.ScaleBarRead;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What was measured, in plain lines for a screen; and the pictures to draw it on. */
final class GaugeText {

    private static final double MM_PER_INCH = 25.4;

    private final GaugedEntry entry;
    private final OptionalDouble ppi;
    private final StringBuilder lines = new StringBuilder();
    private final List<Drawing> drawings = new ArrayList<>();
    private boolean measured = true;

    private GaugeText(GaugedEntry entry, OptionalDouble ppi) {
        this.entry = entry;
        this.ppi = ppi;
    }

    /** What is to be drawn on one photograph. */
    record Drawing(GaugedPhoto photo, List<Outline> outlines, ScaleBarRead bar, Optional<PictureScale> scale) {

        Annotation.Sheet sheet() throws IOException {
            return new Annotation.Sheet(photo.raster(), outlines, bar, scale);
        }
    }

    /** @param ppi what the person said of pixels to the inch */
    static GaugeText of(List<GaugedPhoto> photos, GaugedEntry entry, OptionalDouble ppi) {
        GaugeText text = new GaugeText(entry, ppi);
        photos.forEach(text::photo);
        text.axis();
        entry.coin().ifPresent(text::compared);
        return text;
    }

    String lines() {
        return lines.toString();
    }

    List<Drawing> drawings() {
        return drawings;
    }

    /** False if any photograph could not be read or showed no outline. */
    boolean measured() {
        return measured;
    }

    private void line(String label, String text) {
        lines.append(String.format(Locale.ROOT, "  %-16s%s%n", label, text));
    }

    private void photo(GaugedPhoto photo) {
        if (!(photo.gauged() instanceof Gauged.Measured gauged)) {
            lines.append(photo.name()).append(": cannot be read: ").append(((Gauged.NotRead) photo.gauged()).words()).append(".\n");
            measured = false;
            return;
        }
        lines.append(photo.name()).append(": ").append(gauged.kind().format()).append(", ").append(gauged.width()).append(" × ")
                .append(gauged.height()).append(" pixels, ").append(colours(gauged.kind().colours())).append(", ").append(gauged.kind().bits()).append(" bits\n");
        if (gauged.outlined() instanceof Outlined.Refused refused) {
            line("outline", "none: " + refused.reason().words() + ".");
            line("", refused.reason().remedy());
            measured = false;
            return;
        }
        Outlined.Found found = (Outlined.Found) gauged.outlined();
        Optional<PictureScale> scale = scale(gauged, found.outlines().get(0));
        line("ground", found.background().kind().word());
        line("edge", "clear along " + Math.round(found.confidence() * 100) + " % of its length");
        line("scale", scale.map(known -> words(known, gauged)).orElse("not known: no scale bar, no entry, no pixels to the inch"));
        for (int i = 0; i < found.outlines().size(); i++) {
            if (found.outlines().size() > 1) {
                lines.append(i == 0 ? "  left side\n" : "  right side\n");
            }
            sizes(found.outlines().get(i), scale);
        }
        drawings.add(new Drawing(photo, found.outlines(), gauged.bar(), scale));
    }

    private static String colours(ReadPicture.Colours colours) {
        return switch (colours) {
            case GREY -> "grey";
            case RGB -> "RGB";
            case CMYK -> "CMYK";
        };
    }

    /** The surest there is: a bar, what the person says, what the entry says, what the file says. */
    private Optional<PictureScale> scale(Gauged.Measured gauged, Outline outline) {
        if (gauged.bar() instanceof ScaleBarRead.Read bar) {
            return Optional.of(PictureScale.of(bar));
        }
        if (ppi.isPresent()) {
            return Optional.of(PictureScale.ofPpi(ppi.getAsDouble()));
        }
        Optional<Double> width = entry.coin().flatMap(Comparison::width);
        if (width.isPresent()) {
            return Optional.of(PictureScale.ofWidth(gauged.width(), width.get()));
        }
        Optional<Double> diameter = entry.comparison().flatMap(Comparison::diameterMm);
        if (diameter.isPresent()) {
            return Optional.of(PictureScale.ofDiameter(outline, diameter.get(), entry.comparison().get().line().orElse(DiameterLine.NOT_SAID)));
        }
        return gauged.ppi().isPresent() ? Optional.of(PictureScale.ofPpi(gauged.ppi().getAsDouble())) : Optional.empty();
    }

    private String words(PictureScale scale, Gauged.Measured gauged) {
        String figure = figure("%.2f", scale.pixelsPerMm()) + " pixels to the millimetre, from ";
        return figure + switch (scale.source()) {
            case SCALE_BAR -> "a scale bar of " + ((ScaleBarRead.Read) gauged.bar()).divisions()
                    + " divisions, each taken to be a millimetre";
            case DECLARED_WIDTH -> "the width of " + entry.coin().flatMap(Comparison::width).map(mm -> figure("%.2f", mm)).orElse("")
                    + " mm that the entry gives";
            case RECORDED_DIAMETER -> "the recorded diameter" + entry.comparison().flatMap(Comparison::line)
                    .map(line -> ", " + line.words() + (line == DiameterLine.NOT_SAID ? " since no convention says which" : "")).orElse("");
            case PIXELS_PER_INCH -> figure("%.0f", scale.pixelsPerMm() * MM_PER_INCH) + " pixels to the inch"
                    + (ppi.isPresent() ? "" : ", as the file says; right only for a scan");
        };
    }

    private void sizes(Outline outline, Optional<PictureScale> scale) {
        line("top to bottom", length(outline.vertical(), scale));
        line("side to side", length(outline.horizontal(), scale));
        line("greatest", along(outline.greatest(), scale));
        line("least", along(outline.least(), scale));
        line("area", scale.map(known -> figure("%.0f mm²", known.life(outline).area())).orElse(figure("%.0f square pixels", outline.area())));
        line("roundness", figure("%.2f", outline.roundness()) + " of the circle over the greatest diameter");
        if (!outline.holes().isEmpty()) {
            line("holes", Integer.toString(outline.holes().size()));
        }
    }

    private static String length(double pixels, Optional<PictureScale> scale) {
        return scale.map(known -> figure("%.1f mm", pixels / known.pixelsPerMm())).orElse(figure("%.1f pixels", pixels));
    }

    private static String along(Caliper caliper, Optional<PictureScale> scale) {
        return length(caliper.length(), scale) + ", " + Math.round(caliper.degrees()) % 180 + "° clockwise from upright";
    }

    private void axis() {
        if (entry.pictures().axis().isEmpty()) {
            return;
        }
        AxisFromOutlines axis = entry.pictures().axis().get();
        lines.append("Axis, from the edges of the two sides as they stand\n");
        if (axis instanceof AxisFromOutlines.Angle angle) {
            line("axis", angle.hour() + " h (" + Math.round(angle.degrees()) % 360 + "°)");
            line("confidence", figure("%.2f", angle.confidence()) + "; next best " + Math.round(angle.second()) % 360 + "°");
        } else {
            line("axis", "cannot be told: " + ((AxisFromOutlines.CannotTell) axis).reason().words() + ".");
        }
    }

    private void compared(Coin coin) {
        lines.append("Against the entry “").append(coin.id()).append("” (").append(coin.place().file()).append(")\n");
        Optional<Comparison.Diameter> diameter = entry.comparison().flatMap(Comparison::diameter);
        Optional<Comparison.Turn> turn = entry.comparison().flatMap(Comparison::axis);
        diameter.ifPresent(size -> line("diameter", "“" + size.recorded().recorded() + "” recorded, "
                + figure("%.1f", size.shown()) + " mm on the photograph (" + size.line() + ")" + (size.agrees() ? "" : ": they do not agree")));
        turn.ifPresent(each -> line("axis", "“" + each.recorded().recorded() + "” recorded, " + each.shown().hour()
                + " h on the photographs" + (each.agrees() ? "" : ": they do not agree" + each.slip()
                        .map(slip -> "; perhaps " + slip.slip().words()).orElse(""))));
        if (diameter.isEmpty() && turn.isEmpty()) {
            line("", "nothing to compare: no diameter with a scale of the photograph’s own, no axis with two edges that tell it");
        }
    }

    private static String figure(String form, double figure) {
        return String.format(Locale.ROOT, form, figure);
    }
}
