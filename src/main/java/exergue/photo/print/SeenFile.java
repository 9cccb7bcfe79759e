package exergue.photo.print;

import exergue.photo.Outline;
import exergue.photo.Outlined;
import exergue.photo.Point;
import exergue.photo.Ring;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was seen, as bytes for the cache. Places are kept to a few hundred-thousandths of a pixel. */
final class SeenFile {

    private static final byte UNREADABLE = 0;
    private static final byte SHOWN = 1;

    private SeenFile() { }

    static byte[] bytes(Seen seen) {
        if (seen instanceof Seen.Unreadable unreadable) {
            byte[] words = unreadable.words().getBytes(StandardCharsets.UTF_8);
            return ByteBuffer.allocate(1 + words.length).put(UNREADABLE).put(words).array();
        }
        Seen.Shown shown = (Seen.Shown) seen;
        byte[] refused = shown.refused().map(Enum::name).orElse("").getBytes(StandardCharsets.UTF_8);
        int size = 1 + 4 + 4 + 1 + 1 + 4 + refused.length + 4;
        for (Seen.Side side : shown.sides()) {
            size += 3 * 4 + 4 + room(side.outline().edge()) + side.outline().holes().stream().mapToInt(SeenFile::room).sum();
        }
        ByteBuffer out = ByteBuffer.allocate(size).put(SHOWN).putInt(shown.width()).putInt(shown.height())
                .put((byte) (shown.asItIs() ? 1 : 0)).put((byte) (shown.grey() ? 1 : 0)).putInt(refused.length).put(refused)
                .putInt(shown.sides().size());
        for (Seen.Side side : shown.sides()) {
            out.putInt(side.tone().mean()).putInt(side.tone().spread()).putInt(side.tone().clipped())
                    .putInt(side.outline().holes().size());
            put(side.outline().edge(), out);
            side.outline().holes().forEach(hole -> put(hole, out));
        }
        return out.array();
    }

    private static int room(Ring ring) {
        return 4 + 8 * ring.size();
    }

    private static void put(Ring ring, ByteBuffer out) {
        out.putInt(ring.size());
        ring.points().forEach(point -> out.putFloat((float) point.x()).putFloat((float) point.y()));
    }

    /** Empty for bytes that this class has not written. */
    static Optional<Seen> read(byte[] bytes) {
        try {
            ByteBuffer in = ByteBuffer.wrap(bytes);
            return Optional.of(in.get() == UNREADABLE ? new Seen.Unreadable(words(in, in.remaining())) : shown(in));
        } catch (BufferUnderflowException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static Seen shown(ByteBuffer in) {
        int width = in.getInt();
        int height = in.getInt();
        boolean asItIs = in.get() == 1;
        boolean grey = in.get() == 1;
        String refused = words(in, in.getInt());
        List<Seen.Side> sides = new ArrayList<>();
        for (int count = in.getInt(); count > 0; count--) {
            Tone tone = new Tone(in.getInt(), in.getInt(), in.getInt());
            int holes = in.getInt();
            Ring edge = ring(in);
            List<Ring> inside = new ArrayList<>();
            for (int i = 0; i < holes; i++) {
                inside.add(ring(in));
            }
            sides.add(new Seen.Side(new Outline(edge, inside), tone));
        }
        return new Seen.Shown(width, height, asItIs, grey, sides,
                refused.isEmpty() ? Optional.empty() : Optional.of(Outlined.Reason.valueOf(refused)));
    }

    private static String words(ByteBuffer in, int length) {
        byte[] words = new byte[length];
        in.get(words);
        return new String(words, StandardCharsets.UTF_8);
    }

    private static Ring ring(ByteBuffer in) {
        List<Point> points = new ArrayList<>();
        for (int count = in.getInt(); count > 0; count--) {
            points.add(new Point(in.getFloat(), in.getFloat()));
        }
        return new Ring(points);
    }
}
