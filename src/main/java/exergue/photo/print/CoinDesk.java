package exergue.photo.print;

import exergue.files.Cache;
import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.model.Coin;
import exergue.model.PictureStyle;
import exergue.model.Written;
import exergue.photo.Outlined;
import exergue.photo.ReadPicture;
import exergue.photo.print.CoinPrinter.Exposure;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Takes up the photographs of one coin, says what is wrong with them, and has its pictures made. */
final class CoinDesk {

    /** Of a thousand pixels of the coin. */
    private static final int MOST_CLIPPED = 20;

    private final Tree source;
    private final Cache cache;
    private final Function<byte[], ReadPicture> reader;
    private final PictureStyle style;

    CoinDesk(Tree source, Cache cache, Function<byte[], ReadPicture> reader, PictureStyle style) {
        this.source = source;
        this.cache = cache;
        this.reader = reader;
        this.style = style;
    }

    CoinPrint print(Coin coin, PrintedSize.Size size) {
        return new Work(coin.photograph().orElseThrow(), size).print();
    }

    private final class Work {

        private final Coin.Photograph photograph;
        private final PrintedSize.Size size;
        private final List<Finding> findings = new ArrayList<>();

        Work(Coin.Photograph photograph, PrintedSize.Size size) {
            this.photograph = photograph;
            this.size = size;
        }

        CoinPrint print() {
            boolean one = photograph.obverse().map(Written::value).equals(photograph.reverse().map(Written::value));
            Optional<Negative> front = photograph.obverse().flatMap(this::open);
            Optional<Negative> back = one ? front : photograph.reverse().flatMap(this::open);
            Optional<Exposure> obverse = front.flatMap(negative -> exposed(negative, 0, photograph.obverse().orElseThrow()));
            Optional<Exposure> reverse = one ? obverse.filter(CoinDesk::showsTwo).map(side -> second(side.negative(), side.shown()))
                    : back.flatMap(negative -> exposed(negative, 1, photograph.reverse().orElseThrow()));
            if (one && reverse.isEmpty() && obverse.flatMap(Exposure::outlined).isPresent()) {
                notCut(photograph.obverse().orElseThrow(), "it is named for both sides and shows one coin",
                        "Give each side its own photograph.");
            }
            if (photograph.reverse().isEmpty() && obverse.filter(CoinDesk::showsTwo).isPresent()) {
                reverse = obverse.map(side -> second(side.negative(), side.shown()));
                two(photograph.obverse().orElseThrow());
            } else if (photograph.obverse().isEmpty() && reverse.filter(CoinDesk::showsTwo).isPresent()) {
                obverse = reverse.map(side -> new Exposure(side.negative(), side.shown(), Optional.of(0)));
                two(photograph.reverse().orElseThrow());
            }
            CoinPrinter.Sides sides = new CoinPrinter(style, size).print(obverse, reverse);
            develop(sides, front, back);
            return new CoinPrint(sides.obverse().or(() -> unopened(photograph.obverse())),
                    sides.reverse().or(() -> one ? Optional.empty() : unopened(photograph.reverse())), size.isKnown(), size.scale(), findings);
        }

        /** Empty if the file is not there; the typesetter says so where it looks for it. */
        private Optional<Negative> open(Written<String> path) {
            try {
                return source.has(path.value()) ? Optional.of(new Negative(path.value(), source, cache, reader))
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

        private void develop(CoinPrinter.Sides sides, Optional<Negative> front, Optional<Negative> back) {
            List<Negative> open = java.util.stream.Stream.concat(front.stream(), back.stream()).toList();
            java.util.stream.Stream.concat(sides.obverse().stream(), sides.reverse().stream()).forEach(side -> side.cut()
                    .ifPresent(cut -> open.stream().filter(negative -> negative.path().equals(cut.source())).findFirst()
                            .orElseThrow().develop(cut)));
        }
    }

    private static boolean showsTwo(Exposure side) {
        return side.shown().sides().size() > 1;
    }

    private static Exposure second(Negative negative, Seen.Shown shown) {
        return new Exposure(negative, shown, Optional.of(1));
    }
}
