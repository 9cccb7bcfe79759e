package exergue.study.match;

import exergue.study.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * An answer in words.
 *
 * @param ticket     id of the coin that the ticket names; empty for none
 * @param coin       id of the coin it is; a dash for none
 * @param candidates "ark-004 97 % (+0.01 g, −0.2 mm, 0 h)", the most probable first; those of less than one in a hundred are left
 *                   out after the first
 */
public record MatchRow(String label, String ticket, String coin, String sureness, List<String> candidates) {

    public static final List<String> HEAD = List.of("label", "ticket", "is", "how sure", "may be");

    private static final double WORTH_NAMING = 0.01;

    public MatchRow {
        candidates = List.copyOf(candidates);
    }

    public static MatchRow of(Match match) {
        List<String> candidates = new ArrayList<>();
        for (Candidate candidate : match.candidates()) {
            if (candidates.isEmpty() || candidate.share() >= WORTH_NAMING) {
                candidates.add(candidate.coin() + " " + percent(candidate.share()) + differences(candidate));
            }
        }
        return new MatchRow(match.fresh().label().value(), match.fresh().ticket().map(ticket -> ticket.value()).orElse(""),
                match.coin().orElse("–"), match.sureness().words(), candidates);
    }

    private static String percent(double share) {
        String rounded = Figure.words(100 * share, 0);
        return rounded.equals("100") ? "over 99 %" : rounded.equals("0") ? "under 1 %" : rounded + " %";
    }

    private static String differences(Candidate candidate) {
        List<String> differences = new ArrayList<>();
        add(differences, candidate.weight(), 2, "g");
        add(differences, candidate.diameter(), 1, "mm");
        add(differences, candidate.axis(), 1, "h");
        return differences.isEmpty() ? "" : " (" + String.join(", ", differences) + ")";
    }

    private static void add(List<String> differences, OptionalDouble difference, int decimals, String unit) {
        if (difference.isPresent()) {
            String words = Figure.words(difference.getAsDouble(), decimals);
            boolean more = Figure.rounded(difference.getAsDouble(), decimals).signum() > 0;
            differences.add((more ? "+" : "") + words.replaceAll("^0\\.0+$", "0").replaceAll("\\.0$", "") + " " + unit);
        }
    }
}
