package exergue.source.yaml;

import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.source.text.Conflict;
import exergue.source.text.Conflict.Region;
import exergue.source.text.Conflict.Version;
import exergue.source.text.Conflict.Which;
import exergue.source.text.ConflictWords;
import exergue.source.text.Notebook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A YAML file with an unfinished merge in it, explained key by key instead of as a fault of YAML. */
public final class ConflictedEntry {

    private static final String MARKS = " Delete the lines with <<<<<<<, ======= and >>>>>>>.";
    private static final String CHOOSE = "Keep the value that is right, once." + MARKS;
    private static final String KEEP_BOTH = "If both are right, keep both, one below the other; else the one that is right." + MARKS;
    private static final String KEEP_IT = "Keep it if it is right, beside what else is right of the two texts." + MARKS;

    /** A path that leads through a member of a list. */
    private static final Pattern MEMBER = Pattern.compile(".*\\[[0-9]+].*");

    /** The key of an exact find-spot, and whatever somebody has put under it. */
    private static final Pattern EXACT = Pattern.compile("((?:.*\\.)?exact)(?:[.\\[].*)?");

    /** What stands where in one version. @param place in the file itself */
    private record Given(String text, Place place) { }

    private final Conflict conflict;
    private final List<Finding> findings = new ArrayList<>();

    private ConflictedEntry(Conflict conflict) {
        this.conflict = conflict;
    }

    /** One finding for each key that the two sides have otherwise; places are those of the file with its marks. */
    public static List<Finding> explain(Conflict conflict) {
        ConflictedEntry entry = new ConflictedEntry(conflict);
        entry.findings.addAll(ConflictWords.strays(conflict));
        if (!conflict.regions().isEmpty()) {
            entry.compare();
        }
        return entry.findings;
    }

    private void compare() {
        Optional<Map<String, Given>> upper = keys(conflict.version(Which.UPPER));
        Optional<Map<String, Given>> lower = keys(conflict.version(Which.LOWER));
        if (upper.isEmpty() || lower.isEmpty()) {
            conflict.regions().forEach(region -> findings.add(ConflictWords.at(conflict, region,
                    "A merge has left two texts here, and at least one of them is no sound entry by itself.",
                    "Put together what is right of both, and delete the lines with <<<<<<<, ======= and >>>>>>>.")));
            return;
        }
        Optional<Map<String, Given>> base = conflict.hasBase() ? keys(conflict.version(Which.BASE)) : Optional.empty();
        Set<String> paths = new LinkedHashSet<>(upper.get().keySet());
        paths.addAll(lower.get().keySet());
        int before = findings.size();
        for (String path : paths) {
            Optional<Given> one = Optional.ofNullable(upper.get().get(path));
            Optional<Given> other = Optional.ofNullable(lower.get().get(path));
            if (!text(one).equals(text(other))) {
                findings.add(finding(path, one, other, base.map(there -> text(Optional.ofNullable(there.get(path))))));
            }
        }
        if (findings.size() == before) {
            conflict.regions().forEach(region -> findings.add(ConflictWords.at(conflict, region,
                    "A merge has left two texts here that say the same.",
                    "Keep either, and delete the other and the lines with <<<<<<<, ======= and >>>>>>>.")));
        }
    }

    private static Optional<String> text(Optional<Given> given) {
        return given.map(Given::text);
    }

    private Finding finding(String path, Optional<Given> one, Optional<Given> other, Optional<Optional<String>> base) {
        Place place = one.or(() -> other).orElseThrow().place();
        Finding finding = Finding.of(ConflictWords.MERGE_CONFLICT, place, EXACT.matcher(path).replaceFirst("$1"), words(path, one, other, base, region(place)),
                remedy(path, one, other, base));
        return one.isPresent() && other.isPresent()
                ? finding.withRelated(other.get().place(), "what " + ConflictWords.label(region(place), Which.LOWER) + " has") : finding;
    }

    private static String words(String path, Optional<Given> one, Optional<Given> other, Optional<Optional<String>> base,
                                Region region) {
        String upper = ConflictWords.label(region, Which.UPPER);
        String lower = ConflictWords.label(region, Which.LOWER);
        Matcher exact = EXACT.matcher(path);
        if (exact.matches()) {
            return "“" + exact.group(1) + "” is not the same in " + upper + " and in " + lower + "; it is a place that is not shown here.";
        }
        if (base.isPresent() && base.get().equals(text(one))) {
            return onlyOne(path, lower, text(one), text(other));
        }
        if (base.isPresent() && base.get().equals(text(other))) {
            return onlyOne(path, upper, text(other), text(one));
        }
        return "“" + path + "”: " + upper + " has " + said(text(one)) + ", " + lower + " has " + said(text(other))
                + base.map(was -> was.isEmpty() ? "; before both there was nothing" : "; before both it was " + said(was)).orElse("") + ".";
    }

    private static String onlyOne(String path, String side, Optional<String> before, Optional<String> after) {
        if (before.isEmpty()) {
            return "Only " + side + " has added “" + path + "”: " + said(after) + ".";
        }
        return after.isEmpty() ? "Only " + side + " has taken out “" + path + "”; it was " + said(before) + "."
                : "Only " + side + " has changed “" + path + "”: " + said(before) + " became " + said(after) + ".";
    }

    /** Where both have added a member to a list, or one has added something, nothing need be given up. */
    private static String remedy(String path, Optional<Given> one, Optional<Given> other, Optional<Optional<String>> base) {
        boolean isNew = base.isPresent() && base.get().isEmpty();
        if (one.isPresent() && other.isPresent()) {
            return isNew && MEMBER.matcher(path).matches() ? KEEP_BOTH : CHOOSE;
        }
        return isNew ? KEEP_IT : CHOOSE;
    }

    private static String said(Optional<String> text) {
        return text.map(words -> words.isBlank() ? "nothing" : "“" + words.strip().replace('\n', ' ') + "”").orElse("nothing");
    }

    /** The region that a place lies in, else the first: a change of layout can shift the blame. */
    private Region region(Place place) {
        return conflict.regions().stream().filter(region -> region.upper() <= place.line() && place.line() <= region.lower())
                .findFirst().orElse(conflict.regions().get(0));
    }

    /** Every text of a version by the path of its key; empty where the version is no YAML. */
    private static Optional<Map<String, Given>> keys(Version version) {
        YamlReader.Read read = YamlReader.read(version.text(), new Notebook());
        Map<String, Given> keys = new LinkedHashMap<>();
        if (!read.understood() || read.value().isPresent() && read.value().get() instanceof Scalar) {
            return Optional.empty();
        }
        read.value().ifPresent(value -> take(value, "", version, keys));
        return Optional.of(keys);
    }

    private static void take(Value value, String path, Version version, Map<String, Given> into) {
        if (value instanceof Scalar scalar) {
            Place there = scalar.place();
            into.put(path, new Given(scalar.text(),
                    new Place(there.file(), version.line(there.line()), there.column(), there.length())));
        } else if (value instanceof Value.Items items) {
            for (int i = 0; i < items.values().size(); i++) {
                take(items.values().get(i), path + "[" + (i + 1) + "]", version, into);
            }
        } else if (value instanceof Value.Entries entries) {
            entries.entries().forEach(entry -> take(entry.value(), path.isEmpty() ? entry.key().text()
                    : path + "." + entry.key().text(), version, into));
        }
    }
}
