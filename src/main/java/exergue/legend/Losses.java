package exergue.legend;

import java.util.List;
import java.util.OptionalInt;

/** Dots and dashes for lost letters: a dot is one letter; dashes are any number. */
final class Losses {

    private static final String DOTS = ".…";
    private static final String DASHES = "–—-";

    private Losses() { }

    /** The index after the dots, or after the dashes, that begin at {@code from}, with spaces between them. */
    static int until(List<Sign> signs, int from) {
        String some = DOTS.contains(signs.get(from).text()) ? DOTS : DASHES;
        if (!DOTS.contains(signs.get(from).text()) && !DASHES.contains(signs.get(from).text())) {
            return from;
        }
        int end = from;
        for (int at = from; at < signs.size(); at++) {
            if (some.contains(signs.get(at).text())) {
                end = at + 1;
            } else if (!signs.get(at).text().isBlank()) {
                break;
            }
        }
        return end > from && isLoss(signs, from, end) ? end : from;
    }

    /** A single dash between letters is the type that divides the legend. */
    private static boolean isLoss(List<Sign> signs, int from, int end) {
        boolean dots = DOTS.contains(signs.get(from).text());
        return dots || end - from > 1 || opensOrCloses(signs, from - 1) && opensOrCloses(signs, end);
    }

    private static boolean opensOrCloses(List<Sign> signs, int at) {
        return at >= 0 && at < signs.size() && (Bracket.opening(signs.get(at).text()).isPresent()
                || Bracket.closing(signs.get(at).text()).isPresent());
    }

    static Part of(List<Sign> lost) {
        if (DASHES.contains(lost.get(0).text())) {
            return new Part.Lost(OptionalInt.empty());
        }
        return new Part.Lost(OptionalInt.of(lost.stream()
                .mapToInt(sign -> sign.is("…") ? 3 : sign.is(".") ? 1 : 0).sum()));
    }
}
