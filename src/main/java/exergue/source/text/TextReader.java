package exergue.source.text;

import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.finding.Place;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Bytes to text: the one place that knows of encodings, byte order marks, line ends and invisible characters. */
public final class TextReader {

    /** Larger than any entry or chapter, small enough to be harmless. In bytes. */
    static final long MOST_BYTES = 1L << 20;

    private final Tree tree;
    private final Notebook notebook;

    public TextReader(Tree tree, Notebook notebook) {
        this.tree = tree;
        this.notebook = notebook;
    }

    /** The text, or nothing where the file cannot be read as text; the reason is in the notebook then. */
    public Optional<SourceText> read(String file) throws IOException {
        Optional<byte[]> read = tree.readUpTo(file, MOST_BYTES);
        if (read.isEmpty()) {
            report(Finding.of(TextCodes.FILE_TOO_LARGE, Place.ofFile(file), "",
                    "This file has " + tree.size(file) + " bytes; an entry or chapter has at most " + MOST_BYTES + ".",
                    "Take it out of the folder, or split it."));
            return Optional.empty();
        }
        Optional<String> decoded = decode(file, read.get());
        if (decoded.isEmpty()) {
            return Optional.empty();
        }
        SourceText text = new SourceText(file, withoutInvisible(file, plainLineEnds(decoded.get())));
        if (!text.isComposed()) {
            reportNotComposed(text);
        }
        return isEntry(file) || isMerged(text) ? Optional.of(text) : Optional.empty();
    }

    /** A text that has been decoded elsewhere, without what nobody can see; of which the notebook is told. */
    public SourceText decoded(String file, String text) {
        return new SourceText(file, withoutInvisible(file, plainLineEnds(text)));
    }

    /** Whose conflicts can be explained by more than their lines; see {@code yaml.ConflictedEntry}. */
    private static boolean isEntry(String file) {
        return file.endsWith(".yaml");
    }

    /** False where two texts stand that a merge has left; single marks may be signs of the author's. */
    private boolean isMerged(SourceText text) {
        Optional<Conflict> conflict = Conflict.in(text).filter(found -> !found.regions().isEmpty());
        conflict.ifPresent(found -> ConflictWords.byLines(found).forEach(this::report));
        return conflict.isEmpty();
    }

    private void report(Finding finding) {
        notebook.add(finding);
    }

    private Optional<String> decode(String file, byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        String good = out.flip().toString();
        if (!result.isError() && !EncodingGuess.looksLikeUtf16(bytes)) {
            return Optional.of(good.startsWith("\uFEFF") ? good.substring(1) : good);
        }
        int bad = in.position();
        Place place = bad < bytes.length ? placeAfter(file, good) : new Place(file, 1, 1, 1);
        report(Finding.of(TextCodes.NOT_UTF_8, place, "",
                "This file is not UTF-8: " + EncodingGuess.of(bytes, bad) + ".",
                "Save it again from your editor with the encoding UTF-8."));
        return Optional.empty();
    }

    private static Place placeAfter(String file, String good) {
        String seen = plainLineEnds(good.startsWith("\uFEFF") ? good.substring(1) : good);
        Place end = new SourceText(file, seen).place(seen.length(), 0);
        return new Place(file, end.line(), end.column(), 1);
    }

    private static String plainLineEnds(String text) {
        return text.indexOf('\r') < 0 ? text : text.replace("\r\n", "\n").replace('\r', '\n');
    }

    /** Blanks out what no editor shows and no font has, one for one, so that all places stay right. */
    private String withoutInvisible(String file, String text) {
        StringBuilder mended = null;
        int count = 0;
        for (int i = 0; i < text.length(); i++) {
            if (isInvisible(text.charAt(i), text, i)) {
                mended = mended == null ? new StringBuilder(text) : mended;
                mended.setCharAt(i, ' ');
                count++;
            }
        }
        if (mended == null) {
            return text;
        }
        int first = firstDifference(text, mended);
        report(Finding.of(TextCodes.CONTROL_CHARACTER, new SourceText(file, text).place(first, 1), "",
                "Here stands an invisible character, U+" + String.format(Locale.ROOT, "%04X", (int) text.charAt(first))
                        + (count > 1 ? "; the file has " + count + " of this sort." : "."),
                "Delete it: put the cursor behind it and press backspace, or type the line anew."));
        return mended.toString();
    }

    private static int firstDifference(String text, CharSequence mended) {
        int i = 0;
        while (text.charAt(i) == mended.charAt(i)) {
            i++;
        }
        return i;
    }

    private static boolean isInvisible(char c, String text, int at) {
        if (c < ' ') {
            return c != '\n' && c != '\t';
        }
        if (Character.isSurrogate(c)) {
            return !Character.isSurrogatePair(c, at + 1 < text.length() ? text.charAt(at + 1) : ' ')
                    && !Character.isSurrogatePair(at > 0 ? text.charAt(at - 1) : ' ', c);
        }
        return c >= 0x7F && c <= 0x9F || c == '\u200B' || c == '\u2060' || c == '\u2028' || c == '\u2029' || c == '\uFEFF' || c >= '\uFFFE'
                || c >= '\u202A' && c <= '\u202E' || c >= '\u2066' && c <= '\u2069';
    }

    /** One finding for each line that has such letters; its edit composes the whole line. */
    private void reportNotComposed(SourceText text) {
        for (int number = 1; number <= text.lines(); number++) {
            String line = text.line(number);
            String composed = text.composed(line);
            if (!composed.equals(line)) {
                report(notComposed(text.file(), number, line, composed));
            }
        }
    }

    private static Finding notComposed(String file, int number, String line, String composed) {
        int at = firstDifference(line + "\n\n", composed + "\n");
        int from = at > 0 && Character.getType(line.codePointAt(Math.min(at, line.length() - 1))) == Character.NON_SPACING_MARK ? at - 1 : at;
        String seen = line.substring(from, Math.min(line.length(), from + 2)).strip();
        Place place = new Place(file, number, line.codePointCount(0, from) + 1, 1);
        Finding finding = Finding.of(TextCodes.NOT_COMPOSED, place, "",
                "The letter “" + Normalizer.normalize(seen, Normalizer.Form.NFC) + "” is written as a letter and an accent apart; it is read as one.",
                "Type the letter anew, or let your editor normalise the file to NFC.");
        Place whole = new Place(file, number, 1, line.codePointCount(0, line.length()));
        return new Finding(finding.code(), place, "", finding.what(), finding.remedy(), List.of(),
                Optional.of(new Finding.SafeEdit(whole, line, composed)));
    }
}
