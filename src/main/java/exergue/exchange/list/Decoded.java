package exergue.exchange.list;

import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Written;
import exergue.source.list.ListCodes;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/**
 * Bytes of a list as text. Byte order marks and the noughts of UTF-16 tell an encoding for certain, and so does sound UTF-8 in
 * practice; Windows-1252 is what is left.
 *
 * @param text     empty where it cannot be told
 * @param encoding its name
 * @param taken    whether it is only what is left
 * @param said     why it cannot be told
 */
record Decoded(Optional<String> text, String encoding, boolean taken, Optional<Finding> said) {

    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
    /** So many letters beyond ASCII in a row are Greek or Cyrillic in an old encoding, not western words. Common practice, no source. */
    private static final int LETTERS_OF_ANOTHER_SCRIPT = 4;

    /** How much of a file is looked at for the noughts of UTF-16. */
    private static final int LOOKED_AT = 4096;

    /** @param told the encoding that the file beside the list names */
    static Decoded of(byte[] bytes, String file, Optional<Written<String>> told) {
        if (told.isPresent()) {
            return told(bytes, file, told.get());
        }
        if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
            return certain(decode(bytes, StandardCharsets.UTF_16), "UTF-16", file);
        }
        if (noughts(bytes, 1) > 0) {
            return certain(decode(bytes, StandardCharsets.UTF_16LE), "UTF-16", file);
        }
        if (noughts(bytes, 0) > 0) {
            return certain(decode(bytes, StandardCharsets.UTF_16BE), "UTF-16", file);
        }
        Optional<String> utf8 = decode(bytes, StandardCharsets.UTF_8);
        return utf8.isPresent() ? certain(utf8, "UTF-8", file) : western(bytes, file);
    }

    private static Decoded told(byte[] bytes, String file, Written<String> told) {
        Optional<String> text = decode(bytes, Charset.forName(told.value().equals("utf-16") && !startsWith(bytes, 0xFE, 0xFF)
                && !startsWith(bytes, 0xFF, 0xFE) && noughts(bytes, 1) > 0 ? "UTF-16LE" : told.value()));
        return text.isPresent() ? certain(text, told.value(), file) : new Decoded(Optional.empty(), told.value(), false,
                Optional.of(Finding.of(ListCodes.ENCODING, told.place(), "encoding",
                        "The list is not saved in the encoding “" + told.value() + "”: it has bytes that mean nothing there.",
                        "Delete this line, so that the encoding is told by the bytes, or save the list again as UTF-8.")));
    }

    private static Decoded certain(Optional<String> text, String encoding, String file) {
        return text.isPresent() ? new Decoded(text.map(Decoded::withoutMark), encoding, false, Optional.empty())
                : new Decoded(Optional.empty(), encoding, false, Optional.of(unknown(file)));
    }

    private static Decoded western(byte[] bytes, String file) {
        Optional<String> text = decode(bytes, WINDOWS_1252);
        if (text.isEmpty() || longestRun(bytes) >= LETTERS_OF_ANOTHER_SCRIPT) {
            return new Decoded(Optional.empty(), "", false, Optional.of(unknown(file)));
        }
        return new Decoded(text, "Windows-1252", true, Optional.empty());
    }

    private static Finding unknown(String file) {
        return Finding.of(ListCodes.ENCODING, Place.ofFile(file), "",
                "It cannot be told in which encoding the list is saved: it is neither UTF-8 nor, as it seems, Windows-1252.",
                "Save it again as “CSV UTF-8”; or, if you know the encoding, write it into the file beside the list, such as "
                        + "encoding: windows-1253 for Greek.");
    }

    private static Optional<String> decode(byte[] bytes, Charset charset) {
        try {
            return Optional.of(charset.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes)).toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    private static String withoutMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static boolean startsWith(byte[] bytes, int first, int second) {
        return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    /** Of every second byte from there, a quarter or more is nought in UTF-16 of western languages. */
    private static int noughts(byte[] bytes, int from) {
        int end = Math.min(bytes.length, LOOKED_AT) & ~1;
        int count = 0;
        for (int i = from; i < end; i += 2) {
            count += bytes[i] == 0 ? 1 : 0;
        }
        return end > 0 && count * 8 >= end ? count : 0;
    }

    private static int longestRun(byte[] bytes) {
        int longest = 0;
        int run = 0;
        for (byte one : bytes) {
            run = one < 0 ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    /** In words of the summary. */
    String shownEncoding() {
        return encoding.startsWith("utf") ? encoding.toUpperCase(Locale.ROOT) : encoding.replace("windows", "Windows");
    }
}
