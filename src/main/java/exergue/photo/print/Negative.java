package exergue.photo.print;

import exergue.files.Cache;
import exergue.files.Digest;
import exergue.files.Tree;
import exergue.photo.Fingerprint;
import exergue.photo.Limits;
import exergue.photo.Outline;
import exergue.photo.Outlined;
import exergue.photo.Outliner;
import exergue.photo.PictureReader;
import exergue.photo.Raster;
import exergue.photo.ReadPicture;
import exergue.photo.Workroom;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** One photograph while it is worked on. It is read and unpacked once at most, and only if something on it has to be looked at. */
final class Negative {

    private static final int COPY_PPI = 300;

    private final String path;
    private final Tree source;
    private final String digest;
    private final Cache cache;
    private final Opener opener;
    private ReadPicture unpacked;
    private Workroom.Share share;

    /** @throws IOException if the file cannot be read, where that is needed to know its digest */
    Negative(String path, Tree source, Cache cache, Opener opener) throws IOException {
        this.path = path;
        this.source = source;
        this.digest = source.digest(path);
        this.cache = cache;
        this.opener = opener;
    }

    String path() {
        return path;
    }

    String digest() {
        return digest;
    }

    Seen seen() {
        String name = Fingerprint.of("seen", digest, "");
        return cache.get(name).flatMap(SeenFile::read).orElseGet(() -> {
            byte[] seen = SeenFile.bytes(look());
            cache.put(name, seen);
            return SeenFile.read(seen).orElseThrow(); // as rounded as from the cache, so that both give the same
        });
    }

    /** What it is as a whole, without a look at what it shows. */
    Whole whole() {
        String name = Fingerprint.of("whole", digest, "");
        return Whole.of(new String(cache.get(name).orElseGet(() -> {
            byte[] found = Whole.of(unpacked()).text().getBytes(StandardCharsets.UTF_8);
            cache.put(name, found);
            return found;
        }), StandardCharsets.UTF_8));
    }

    /** The whole of it as a picture that can be printed: upright, grey or in red, green and blue. */
    Cut copy(Whole whole) {
        return new Cut(path, digest, Cut.GROUND, new Cut.Frame(0, 0, 1, whole.width(), whole.height()), whole.grey(), COPY_PPI);
    }

    /** Makes sure that the picture is in the cache; returns it if it had to be made. */
    Optional<byte[]> develop(Cut cut) {
        String name = cut.name();
        if (cache.get(name).isPresent()) {
            return Optional.empty();
        }
        byte[] picture = print(cut);
        cache.put(name, picture);
        return Optional.of(picture);
    }

    byte[] print(Cut cut) {
        Optional<Outline> outline = cut.side() == Cut.GROUND ? Optional.empty()
                : Optional.of(((Seen.Shown) seen()).sides().get(cut.side()).outline());
        return JpegFile.of(Cutter.cut(raster().orElseThrow(), outline, cut), cut.ppi());
    }

    /** Gives back the memory it takes. What is asked of it afterwards and is not in the cache opens it again. */
    void putAway() {
        unpacked = null;
        if (share != null) {
            share.close();
            share = null;
        }
    }

    private ReadPicture unpacked() {
        if (unpacked == null) {
            try {
                unpacked = source.size(path) > Limits.USUAL.bytes() ? PictureReader.tooLong(source.size(path), Limits.USUAL) : opened();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return unpacked;
    }

    /** What is made is kept by the digest; so it must be made of these bytes and no others. */
    private ReadPicture opened() throws IOException {
        try (Workroom.Share ofFile = opener.room().forFile(source.size(path))) {
            byte[] bytes = source.read(path);
            if (!Digest.of(bytes).equals(digest)) {
                throw new IOException("the photograph “" + path + "” was changed meanwhile; make the book again");
            }
            share = opener.room().forPicture(PictureReader.memory(bytes, Limits.USUAL));
            return opener.reader().apply(bytes);
        }
    }

    private Optional<Raster> raster() {
        return unpacked() instanceof ReadPicture.Picture picture ? Optional.of(picture.raster()) : Optional.empty();
    }

    private Seen look() {
        if (unpacked() instanceof ReadPicture.Unreadable unreadable) {
            return new Seen.Unreadable(unreadable.words());
        }
        ReadPicture.Picture picture = (ReadPicture.Picture) unpacked();
        boolean printable = picture.asItIs() || picture.kind().format() == ReadPicture.Format.PNG && picture.kind().bits() <= Byte.SIZE && !picture.turned();
        Raster raster = picture.raster();
        Outlined outlined = Outliner.find(raster);
        List<Seen.Side> sides = outlined instanceof Outlined.Found found
                ? found.outlines().stream().map(outline -> new Seen.Side(outline, Tone.of(raster, outline))).toList() : List.of();
        return new Seen.Shown(raster.width(), raster.height(), printable, raster.channels() == 1, sides,
                outlined instanceof Outlined.Refused refused ? Optional.of(refused.reason()) : Optional.empty());
    }
}
