package exergue.typeset;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The book's face in its four styles, parsed once in the life of the program. Glyph substitution is off: with it on
 * ligatures would be set that cannot be read back out of the PDF.
 */
final class Faces {

    static final String FAMILY = "Gentium Book Plus";

    enum Style {
        REGULAR(400, false, "Regular"), ITALIC(400, true, "Italic"),
        BOLD(700, false, "Bold"), BOLD_ITALIC(700, true, "BoldItalic");

        final int weight;
        final boolean italic;
        private final String file;

        Style(int weight, boolean italic, String file) {
            this.weight = weight;
            this.italic = italic;
            this.file = "exergue/fonts/GentiumBookPlus-" + file + ".ttf";
        }
    }

    /** "GSUB" */
    private static final int SUBSTITUTION = 0x47535542;

    private static final Map<Style, TrueTypeFont> PARSED = new EnumMap<>(Style.class);
    private static final Map<Style, CmapLookup> LETTERS = new EnumMap<>(Style.class);

    private Faces() { }

    static synchronized TrueTypeFont of(Style style) {
        return PARSED.computeIfAbsent(style, Faces::parse);
    }

    /** Whether the face has a glyph for this code point. */
    static synchronized boolean has(Style style, int codePoint) {
        return LETTERS.computeIfAbsent(style, Faces::letters).getGlyphId(codePoint) != 0;
    }

    private static CmapLookup letters(Style style) {
        try {
            return of(style).getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The face as it comes, for those who parse it themselves. */
    static InputStream bytes(Style style) {
        InputStream in = Faces.class.getClassLoader().getResourceAsStream(style.file);
        if (in == null) {
            throw new IllegalStateException("the program comes without its face " + style.file);
        }
        return in;
    }

    private static TrueTypeFont parse(Style style) {
        Quiet.please();
        try (InputStream in = bytes(style)) {
            TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(withoutSubstitution(in.readAllBytes())));
            face.setEnableGsub(false);
            return face;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The same face with the table of glyph substitution said to be empty, lest the parser reads it through for nothing.
     * A face begins with a list of its tables: after twelve bytes, sixteen for each table, of which the first four are
     * its name and the last four its length (OpenType 1.9, The OpenType Font File).
     */
    private static byte[] withoutSubstitution(byte[] face) {
        ByteBuffer tables = ByteBuffer.wrap(face);
        int count = tables.getShort(4);
        for (int table = 12; table < 12 + 16 * count; table += 16) {
            if (tables.getInt(table) == SUBSTITUTION) {
                tables.putInt(table + 12, 0);
            }
        }
        return face;
    }
}
