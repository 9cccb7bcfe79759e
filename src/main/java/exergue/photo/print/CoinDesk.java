package exergue.photo.print;

import exergue.files.Cache;
import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.model.Coin;
import exergue.model.PictureStyle;
import exergue.model.Written;
import exergue.photo.Outlined;
import exergue.photo.print.CoinPrinter.Exposure;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes up the photographs of one coin, says what is wrong with them, and has its pictures made. */
final class CoinDesk {

    /** Of a thousand pixels of the coin. */
    private static final int MOST_CLIPPED = 20;

    private final Tree source;
    private final Cache cache;
    private final Opener opener;
    private final PictureStyle style;

    CoinDesk(Tree source, Cache cache, Opener opener, PictureStyle style) {
        this.source = source;
        this.cache = cache;
        this.opener = opener;
        this.style = style;
    }

    CoinPrint print(Coin coin, PrintedSize.Size size) {
        return new Work(coin.photograph().orElseThrow(), size).print();
    }

    private final class Work {

        private final Coin.Photograph photograph;
        private final PrintedSize.Size size;
        private final boolean oneFile;
        private final List<Finding> findings = new ArrayList<>();

        Work(Coin.Photograph photograph, PrintedSize.Size size) {
            this.photograph = photograph;
            this.size = size;
            this.oneFile = photograph.obverse().map(Written::value).equals(photograph.reverse().map(Written::value));
        }

        CoinPrint print() {
            Optional<Negative> front = photograph.obverse().flatMap(this::open);
            Optional<Negative> back = oneFile ? front : photograph.reverse().flatMap(this::open);
            try {
                return print(front, back);
            } finally {
                front.ifPresent(Negative::putAway);
                back.ifPresent(Negative::putAway);
            }
        }

        private CoinPrint print(Optional<Negative> front, Optional<Negative> back) {
            CoinPrinter printer = new CoinPrinter(style, size);
            Optional<Exposure> first = front.flatMap(negative -> exposed(negative, 0, photograph.obverse().orElseThrow()));
            Optional<CoinPrint.Side> early = oneFile || back.isEmpty() ? Optional.empty() : first.map(printer::obverse);
            if (early.isPresent()) { // so that the memory of one photograph is given back before the next is opened
                develop(early.get(), first.orElseThrow());
                front.orElseThrow().putAway();
            }
            Optional<Exposure> second = oneFile ? shared(first)
                    : back.flatMap(negative -> exposed(negative, 1, photograph.reverse().orElseThrow()));
            Optional<Exposure> obverse = photograph.obverse().isEmpty() ? alsoShown(second, 0) : first;
            Optional<Exposure> reverse = photograph.reverse().isEmpty() ? alsoShown(first, 1) : second;
            Optional<CoinPrint.Side> obversePrint = early.or(() -> obverse.map(printer::obverse));
            Optional<CoinPrint.Side> reversePrint = reverse.map(side -> printer.reverse(side, obverse));
            if (early.isEmpty()) {
                obversePrint.ifPresent(side -> develop(side, obverse.orElseThrow()));
            }
            reversePrint.ifPresent(side -> develop(side, reverse.orElseThrow()));
            return new CoinPrint(obversePrint.or(() -> unopened(photograph.obverse())),
                    reversePrint.or(() -> oneFile ? Optional.empty() : unopened(photograph.reverse())), size.isKnown(), size.scale(), findings);
        }

        /** The reverse on a file that is named for both sides. */
        private Optional<Exposure> shared(Optional<Exposure> obverse) {
            Optional<Exposure> reverse = obverse.filter(CoinDesk::showsTwo).map(side -> side(side, 1));
            if (reverse.isEmpty() && obverse.flatMap(Exposure::outlined).isPresent()) {
                notCut(photograph.obverse().orElseThrow(), "it is named for both sides and shows one coin",
                        "Give each side its own photograph.");
            }
            return reverse;
        }

        /** The side for which no file is named, if it is on the file of the other. */
        private Optional<Exposure> alsoShown(Optional<Exposure> other, int number) {
            Optional<Exposure> found = other.filter(CoinDesk::showsTwo).map(side -> side(side, number));
            found.ifPresent(side -> two(photograph.obverse().or(photograph::reverse).orElseThrow()));
            return found;
        }

        /** Empty if the file is not there; the typesetter says so where it looks for it. */
        private Optional<Negative> open(Written<String> path) {
            try {
                return source.has(path.value()) ? Optional.of(new Negative(path.value(), source, cache, opener))
                        : Optional.empty();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private Optional<Exposure> exposed(Negative negative, int wanted, Written<String> path) {
            if (negative.seen() instanceof Seen.Unreadable unreadable) {
                findings.add(Finding.of(PrintCodes.UNPRINTABLE, path.place(), "photograph",
                        "The photograph “" + path.value() + "” cannot be opened: " + unreadable.words() + ".",
                        "Copy it anew from where it came; if it is too large, save it with fewer pixels: a coin needs no more than "
                                + "450 to the inch at its printed size."));
                return Optional.empty();
            }
            Seen.Shown shown = (Seen.Shown) negative.seen();
            if (shown.refused().isPresent() && style.ground() == PictureStyle.Ground.CUT_OUT) {
                Outlined.Reason reason = shown.refused().get();
                notCut(path, reason.words(), reason.remedy());
            }
            Optional<Integer> outlined = shown.sides().isEmpty() ? Optional.empty()
                    : Optional.of(Math.min(wanted, shown.sides().size() - 1));
            outlined.ifPresent(side -> clipped(shown.sides().get(side).tone(), path));
            return Optional.of(new Exposure(negative, shown, outlined));
        }

        private void notCut(Written<String> path, String why, String remedy) {
            findings.add(Finding.of(PrintCodes.NOT_CUT_OUT, path.place(), "photograph",
                    "The coin on “" + path.value() + "” cannot be cut out: " + why + ". The photograph is printed as it is.", remedy));
        }

        private void clipped(Tone tone, Written<String> path) {
            if (tone.clipped() > MOST_CLIPPED) {
                findings.add(Finding.of(PrintCodes.CLIPPED, path.place(), "photograph",
                        "On “" + path.value() + "” " + tone.clipped() + " of a thousand pixels of the coin are pure white.",
                        "Photograph the coin again with softer light or a shorter exposure; making the picture darker brings nothing back."));
            }
        }

        private void two(Written<String> path) {
            findings.add(Finding.of(PrintCodes.TWO_SIDES, path.place(), "photograph",
                    "“" + path.value() + "” shows both sides of the coin, and the entry names it for one.",
                    "Name it under obverse and under reverse."));
        }

        /** What cannot be opened stands in the book as large as its entry says. */
        private Optional<CoinPrint.Side> unopened(Optional<Written<String>> path) {
            return path.map(file -> new CoinPrint.Side(file.value(), Optional.empty(), size.ofWholePicture(), size.ofWholePicture(),
                    "", Optional.empty()));
        }

        private void develop(CoinPrint.Side side, Exposure exposure) {
            side.cut().ifPresent(exposure.negative()::develop);
        }
    }

    private static boolean showsTwo(Exposure side) {
        return side.shown().sides().size() > 1;
    }

    private static Exposure side(Exposure other, int number) {
        return new Exposure(other.negative(), other.shown(), Optional.of(number));
    }
}
