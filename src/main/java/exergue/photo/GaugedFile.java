package exergue.photo;

import exergue.photo.Gauged.Measured;
import exergue.photo.Gauged.NotRead;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What was measured on one picture, as bytes for the cache. */
final class GaugedFile {

    private GaugedFile() { }

    static byte[] bytes(Gauged gauged) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            write(gauged, new DataOutputStream(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException("memory can be written to", e);
        }
        return bytes.toByteArray();
    }

    private static void write(Gauged gauged, DataOutputStream out) throws IOException {
        out.writeBoolean(gauged instanceof Measured);
        if (gauged instanceof NotRead unread) {
            out.writeUTF(unread.reason().name());
            out.writeUTF(unread.words());
            return;
        }
        Measured measured = (Measured) gauged;
        out.writeInt(measured.width());
        out.writeInt(measured.height());
        out.writeUTF(measured.kind().format().name());
        out.writeUTF(measured.kind().colours().name());
        out.writeInt(measured.kind().bits());
        out.writeDouble(measured.ppi().orElse(0));
        write(measured.outlined(), out);
        write(measured.bar(), out);
    }

    private static void write(Outlined outlined, DataOutputStream out) throws IOException {
        out.writeBoolean(outlined instanceof Outlined.Found);
        if (outlined instanceof Outlined.Refused refused) {
            out.writeUTF(refused.reason().name());
            return;
        }
        Outlined.Found found = (Outlined.Found) outlined;
        out.writeDouble(found.confidence());
        Background ground = found.background();
        out.writeUTF(ground.kind().name());
        for (double figure : new double[] {ground.red(), ground.green(), ground.blue(), ground.noise()}) {
            out.writeDouble(figure);
        }
        out.writeInt(found.outlines().size());
        for (Outline outline : found.outlines()) {
            OutlineFile.write(outline, out);
        }
    }

    private static void write(ScaleBarRead bar, DataOutputStream out) throws IOException {
        out.writeBoolean(bar instanceof ScaleBarRead.Read);
        if (bar instanceof ScaleBarRead.NotRead unread) {
            out.writeUTF(unread.reason().name());
            return;
        }
        ScaleBarRead.Read read = (ScaleBarRead.Read) bar;
        out.writeDouble(read.pixelsPerMm());
        out.writeInt(read.divisions());
        for (double figure : new double[] {read.uneven(), read.degrees(), read.from().x(), read.from().y(), read.to().x(), read.to().y()}) {
            out.writeDouble(figure);
        }
    }

    /** Empty for bytes that this class has not written. */
    static Optional<Gauged> read(byte[] bytes) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            return Optional.of(in.readBoolean() ? measured(in) : new NotRead(ReadPicture.Reason.valueOf(in.readUTF()), in.readUTF()));
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static Measured measured(DataInputStream in) throws IOException {
        int width = in.readInt();
        int height = in.readInt();
        ReadPicture.Kind kind = new ReadPicture.Kind(ReadPicture.Format.valueOf(in.readUTF()),
                ReadPicture.Colours.valueOf(in.readUTF()), in.readInt());
        double ppi = in.readDouble();
        return new Measured(width, height, kind, ppi == 0 ? OptionalDouble.empty() : OptionalDouble.of(ppi), outlined(in), bar(in));
    }

    private static Outlined outlined(DataInputStream in) throws IOException {
        if (!in.readBoolean()) {
            return new Outlined.Refused(Outlined.Reason.valueOf(in.readUTF()));
        }
        double confidence = in.readDouble();
        Background ground = new Background(Background.Kind.valueOf(in.readUTF()), in.readDouble(), in.readDouble(), in.readDouble(),
                in.readDouble());
        List<Outline> outlines = new ArrayList<>();
        for (int count = in.readInt(); count > 0; count--) {
            outlines.add(OutlineFile.read(in));
        }
        return new Outlined.Found(outlines, confidence, ground);
    }

    private static ScaleBarRead bar(DataInputStream in) throws IOException {
        if (!in.readBoolean()) {
            return new ScaleBarRead.NotRead(ScaleBarRead.Reason.valueOf(in.readUTF()));
        }
        return new ScaleBarRead.Read(in.readDouble(), in.readInt(), in.readDouble(), in.readDouble(),
                new Point(in.readDouble(), in.readDouble()), new Point(in.readDouble(), in.readDouble()));
    }
}
