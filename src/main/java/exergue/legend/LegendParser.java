package exergue.legend;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** A text with the signs of the Leiden system to a legend; everything wrong with it in one go. */
public final class LegendParser {

    /** As many remarks as help; a text with more of them is no legend. */
    private static final int MOST = 12;

    private final List<Sign> signs;
    private final List<Remark> remarks = new ArrayList<>();
    private final Deque<Open> open = new ArrayDeque<>();

    /** A bracket that is not closed yet. @param from index of the first sign inside; @param before the parts before it */
    private record Open(Bracket bracket, Sign sign, int from, List<Part> before) { }

    private LegendParser(String text) {
        this.signs = Sign.of(text);
    }

    /** Never throws, whatever the text. */
    public static Parsed parse(String text) {
        LegendParser parser = new LegendParser(text);
        List<Part> parts = parser.parts();
        return new Parsed(parser.remarks.isEmpty() ? new Legend(text, parts) : Legend.asWritten(text), parser.remarks);
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        int at = 0;
        while (at < signs.size() && remarks.size() < MOST) {
            Sign sign = signs.get(at);
            Optional<Bracket> opening = Bracket.opening(sign.text());
            Optional<Bracket> closing = Bracket.closing(sign.text());
            if (opening.isPresent()) {
                checkNesting(opening.get(), sign);
                open.push(new Open(opening.get(), sign, at + 1, parts));
                parts = new ArrayList<>();
            } else if (closing.isPresent()) {
                parts = closed(closing.get(), at, parts);
            } else {
                at = letters(at, parts);
                continue;
            }
            at++;
        }
        for (Open left : open) {
            report(LegendFault.UNBALANCED, left.sign(), "The bracket “" + left.bracket().open() + "” is not closed.",
                    "Write “" + left.bracket().close() + "” where what is " + left.bracket().meaning()
                            + " ends; if the end is lost too, write “[– – –]”.");
        }
        return parts;
    }

    private void checkNesting(Bracket inner, Sign sign) {
        Open outer = open.peek();
        if (outer != null && !outer.bracket().mayHold(inner)) {
            report(LegendFault.NESTED, sign, "“" + inner.open() + "” stands inside “" + outer.bracket().open() + " "
                    + outer.bracket().close() + "”, whose letters are " + outer.bracket().meaning() + ".",
                    inner == outer.bracket() ? "One pair of these brackets is enough."
                            : "Close “" + outer.bracket().open() + "” first, or leave the inner brackets out.");
        }
    }

    /** The parts that were there before the bracket, and the bracket with what is in it. */
    private List<Part> closed(Bracket bracket, int at, List<Part> inside) {
        Open last = open.peek();
        Sign sign = signs.get(at);
        if (last == null || last.bracket() != bracket) {
            boolean further = open.stream().anyMatch(o -> o.bracket() == bracket);
            if (!further) {
                report(LegendFault.UNBALANCED, sign, "The bracket “" + bracket.close() + "” closes none.",
                        "Write “" + bracket.open() + "” where what is " + bracket.meaning()
                                + " begins; if the beginning is lost too, write “[– – –]”.");
                return inside;
            }
            report(LegendFault.CROSSED, sign, "“" + bracket.close() + "” stands here, and “" + last.bracket().open()
                    + "” inside it is not closed yet.", "Close “" + last.bracket().open() + "” with “" + last.bracket().close()
                    + "” before it.");
            while (open.peek().bracket() != bracket) {
                open.pop();
            }
            return open.pop().before();
        }
        open.pop();
        if (isEmpty(last.from(), at)) {
            remarks.add(new Remark(LegendFault.EMPTY, last.sign().offset(), sign.offset() + sign.length() - last.sign().offset(),
                    "There is nothing between “" + bracket.open() + "” and “" + bracket.close() + "”.",
                    bracket.countsLosses() ? "Write a dot for each lost letter, “[...]”, or “[– – –]” where nobody knows how many."
                            : "Write the letters that are " + bracket.meaning() + ", or leave the brackets out."));
        }
        last.before().add(new Part.Bracketed(bracket, inside));
        return last.before();
    }

    private boolean isEmpty(int from, int to) {
        return signs.subList(from, to).stream().allMatch(sign -> sign.text().isBlank());
    }

    /** Takes what belongs together from {@code at} on; the index after it. */
    private int letters(int at, List<Part> parts) {
        Sign first = signs.get(at);
        if (first.isLoose()) {
            report(LegendFault.LOOSE_MARK, first, "Here a dot below or a tie stands on no letter.",
                    "Put it straight after its letter, without a space between.");
            return at + 1;
        }
        if (first.is("|") || first.is("/")) {
            parts.add(new Part.LineEnd(first.text()));
            return at + 1;
        }
        int lost = lostUntil(at);
        if (lost > at) {
            parts.add(Losses.of(signs.subList(at, lost)));
            return lost;
        }
        if (first.isTied()) {
            return ligature(at, parts);
        }
        int end = at;
        while (end < signs.size() && isLike(first, signs.get(end)) && (end == at || lostUntil(end) == end)) {
            end++;
        }
        StringBuilder text = new StringBuilder();
        signs.subList(at, end).forEach(sign -> text.append(sign.letter()));
        parts.add(first.isDotted() ? new Part.Damaged(text.toString()) : new Part.Plain(text.toString()));
        return end;
    }

    private static boolean isLike(Sign first, Sign next) {
        return next.isDotted() == first.isDotted() && !next.isTied() && !next.isLoose() && !next.is("|") && !next.is("/")
                && Bracket.opening(next.text()).isEmpty() && Bracket.closing(next.text()).isEmpty();
    }

    private int ligature(int at, List<Part> parts) {
        StringBuilder letters = new StringBuilder();
        int end = at;
        while (end < signs.size() && signs.get(end).isTied() && !signs.get(end).isLoose()) {
            letters.append(signs.get(end++).untied());
        }
        if (end == signs.size() || !Character.isLetterOrDigit(signs.get(end).text().codePointAt(0))) {
            report(LegendFault.LOOSE_MARK, signs.get(end - 1), "“" + signs.get(end - 1).text() + "” is tied to no letter after it.",
                    "Put the tie between the letters that are joined, or leave it out.");
            return end;
        }
        letters.append(signs.get(end).untied());
        parts.add(new Part.Ligature(letters.toString()));
        return end + 1;
    }

    /** Where lost letters that begin here end; here, if none begin. */
    private int lostUntil(int at) {
        Open last = open.peek();
        return last != null && last.bracket().countsLosses() ? Losses.until(signs, at) : at;
    }

    private void report(LegendFault fault, Sign sign, String what, String remedy) {
        remarks.add(new Remark(fault, sign.offset(), sign.length(), what, remedy));
    }
}
