package exergue.photo.print;

import exergue.photo.OutlineFile;
import exergue.photo.Outlined;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was seen, as bytes for the cache. */
final class SeenFile {

    private SeenFile() { }

    static byte[] bytes(Seen seen) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            write(seen, new DataOutputStream(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException("memory can be written to", e);
        }
        return bytes.toByteArray();
    }

    private static void write(Seen seen, DataOutputStream out) throws IOException {
        out.writeBoolean(seen instanceof Seen.Shown);
        if (seen instanceof Seen.Unreadable unreadable) {
            out.writeUTF(unreadable.words());
            return;
        }
        Seen.Shown shown = (Seen.Shown) seen;
        out.writeInt(shown.width());
        out.writeInt(shown.height());
        out.writeBoolean(shown.asItIs());
        out.writeBoolean(shown.grey());
        out.writeUTF(shown.refused().map(Enum::name).orElse(""));
        out.writeInt(shown.sides().size());
        for (Seen.Side side : shown.sides()) {
            out.writeInt(side.tone().mean());
            out.writeInt(side.tone().spread());
            out.writeInt(side.tone().clipped());
            OutlineFile.write(side.outline(), out);
        }
    }

    /** Empty for bytes that this class has not written. */
    static Optional<Seen> read(byte[] bytes) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            return Optional.of(in.readBoolean() ? shown(in) : new Seen.Unreadable(in.readUTF()));
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static Seen shown(DataInputStream in) throws IOException {
        int width = in.readInt();
        int height = in.readInt();
        boolean asItIs = in.readBoolean();
        boolean grey = in.readBoolean();
        String refused = in.readUTF();
        List<Seen.Side> sides = new ArrayList<>();
        for (int count = in.readInt(); count > 0; count--) {
            Tone tone = new Tone(in.readInt(), in.readInt(), in.readInt());
            sides.add(new Seen.Side(OutlineFile.read(in), tone));
        }
        return new Seen.Shown(width, height, asItIs, grey, sides,
                refused.isEmpty() ? Optional.empty() : Optional.of(Outlined.Reason.valueOf(refused)));
    }
}
