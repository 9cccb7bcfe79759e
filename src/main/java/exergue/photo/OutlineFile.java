package exergue.photo;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** An outline as bytes for the cache. Places are kept to a few ten-thousandths of a pixel. */
public final class OutlineFile {

    private OutlineFile() { }

    public static void write(Outline outline, DataOutput out) throws IOException {
        out.writeInt(outline.holes().size());
        write(outline.edge(), out);
        for (Ring hole : outline.holes()) {
            write(hole, out);
        }
    }

    private static void write(Ring ring, DataOutput out) throws IOException {
        out.writeInt(ring.size());
        for (Point point : ring.points()) {
            out.writeFloat((float) point.x());
            out.writeFloat((float) point.y());
        }
    }

    /** @throws IOException or IllegalArgumentException for bytes that this class has not written */
    public static Outline read(DataInput in) throws IOException {
        int holes = in.readInt();
        Ring edge = ring(in);
        List<Ring> inside = new ArrayList<>();
        for (int i = 0; i < holes; i++) {
            inside.add(ring(in));
        }
        return new Outline(edge, inside);
    }

    private static Ring ring(DataInput in) throws IOException {
        List<Point> points = new ArrayList<>();
        for (int count = in.readInt(); count > 0; count--) {
            points.add(new Point(in.readFloat(), in.readFloat()));
        }
        return new Ring(points);
    }
}
