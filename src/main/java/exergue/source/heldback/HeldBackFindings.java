package exergue.source.heldback;

import exergue.files.Tree;
import exergue.finding.Excused;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Findings without the exact places that their sentences quote, and without edits of them. */
public final class HeldBackFindings {

    private static final Pattern QUOTED = Pattern.compile("“([^“”]{3,})”");

    private static final Pattern NAMES = Pattern.compile("[\\p{L}\\p{M}\\p{N}._\\[\\]-]*");

    private static final int FEWEST = 3;

    private final HeldBack heldBack;
    private final String hidden;

    private HeldBackFindings(HeldBack heldBack) {
        this.heldBack = heldBack;
        this.hidden = even(String.join(" ", heldBack.hidden()));
    }

    /** However a message may write it, as an id too: small letters and digits, accents in one character, single spaces. */
    private static String even(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC).toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{M}\\p{N}]+", " ").strip();
    }

    /** @param tree where they were found */
    public static Findings of(Findings findings, Tree tree) {
        boolean concerned = findings.all().stream().anyMatch(HeldBackFindings::isConcerned)
                || findings.excused().stream().anyMatch(one -> isConcerned(one.finding()));
        if (!concerned) {
            return findings;
        }
        HeldBackFindings here = new HeldBackFindings(HeldBack.in(HeldBack.asWritten(tree, HeldBack.FILE)));
        return Findings.of(findings.all().stream().map(here::of).toList(), findings.excused().stream()
                .map(one -> new Excused(here.of(one.finding()), one.because(), one.where())).toList());
    }

    private static boolean isConcerned(Finding finding) {
        return isHere(finding.place()) || finding.related().stream().anyMatch(other -> isHere(other.place()));
    }

    private static boolean isHere(Place place) {
        return place.file().equals(HeldBack.FILE);
    }

    private Finding of(Finding finding) {
        if (!isConcerned(finding)) {
            return finding;
        }
        List<Finding.Related> related = finding.related().stream()
                .map(other -> new Finding.Related(other.place(), words(other.what()))).toList();
        Optional<Finding.SafeEdit> edit = finding.edit().filter(one -> !reaches(one.place()));
        String path = NAMES.matcher(finding.path()).matches() ? finding.path() : "…"; // a place may have been written as a key
        return new Finding(finding.code(), finding.place(), path, words(finding.what()), words(finding.remedy()), related, edit);
    }

    /** Whether it takes in something that is held back. */
    private boolean reaches(Place place) {
        return isHere(place) && place.column() + Math.max(0, place.length() - 1) > heldBack.visible(place.line());
    }

    private boolean holds(String quoted) {
        String even = even(quoted);
        return !even.isEmpty() && hidden.contains(even);
    }

    /** With an ellipsis for each quotation out of what is held back, and for all that is held back of a line. */
    private String words(String sentence) {
        String words = QUOTED.matcher(sentence).replaceAll(quoted -> Matcher.quoteReplacement(
                holds(quoted.group(1)) ? "“…”" : quoted.group()));
        for (String line : heldBack.hidden()) {
            words = line.length() < FEWEST ? words : words.replace(line, "…");
        }
        return words;
    }
}
