package exergue.proof;

import exergue.Exergue;
import exergue.Exergue.Checked;
import exergue.Exergue.Made;
import exergue.Exergue.Publication;
import exergue.finding.Findings;
import exergue.source.heldback.HeldBackFindings;
import exergue.typeset.Area;
import exergue.typeset.Excerpt;
import exergue.typeset.Sheets;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/** Where the proof lies for those who look at it: what there is to see now, and the pages that it names. */
final class ProofTable implements AutoCloseable {

    /** A browser may not have heard yet of the last; the pages of so many proofs stay for it. */
    private static final int KEPT_PROOFS = 4;

    /** Pages of changed entries, in place of those of the whole book. @param first the first that they replace */
    private record Overlay(int first, List<Leaf> leaves) { }

    private final Map<Integer, PageSet> sets = new TreeMap<>();
    private final Deque<Set<Integer>> lately = new ArrayDeque<>();
    private Proof now = Proof.NOTHING_YET;
    private Optional<PageSet> whole = Optional.empty();
    /** Since the whole book was set last, oldest first. */
    private final List<Overlay> laidOver = new ArrayList<>();
    private int nextSet = 1;

    synchronized Proof now() {
        return now;
    }

    /** The next after one that is known, or the one there is when the time is up. */
    synchronized Proof after(int known, long milliseconds) throws InterruptedException {
        if (now.number() == known) {
            wait(milliseconds);
        }
        return now;
    }

    /** Empty if the pages have been laid aside. */
    synchronized Optional<PageSet> set(int id) {
        return Optional.ofNullable(sets.get(id));
    }

    /**
     * The source has been checked; its pages are still those of before.
     *
     * @param changed paths of the files that have
     * @return anchor of the entry whose pages are to be set first: of one file that has changed, or of the first of several
     */
    synchronized Optional<String> checked(Checked checked, Set<String> changed) {
        boolean anew = checked.isSound() || now.leaves().isEmpty() && checked.book().isPresent() && checked.catalogue().isPresent();
        List<Known> entries = anew ? Known.all(checked.book().orElseThrow(), checked.catalogue().orElseThrow()) : now.entries();
        String title = checked.book().map(book -> book.title().title().value()).orElse(now.title());
        Optional<String> first = whole.isEmpty() ? Optional.empty() : entries.stream()
                .filter(entry -> changed.contains(entry.place().file())).map(Known::anchor).findFirst();
        show(now.read(checked.isSound(), title, entries, shown(checked, checked.findings()), first.filter(anchor -> changed.size() == 1)));
        return first;
    }

    /** Lays the pages of the changed entry over those of before. */
    void showFirst(Checked checked, String anchor) throws IOException {
        Sheets before;
        synchronized (this) {
            before = whole.orElseThrow().sheets();
        }
        Optional<Excerpt> excerpt = Stretch.around(anchor, checked.book().orElseThrow(), before);
        if (excerpt.isEmpty()) {
            return;
        }
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Optional<Sheets> sheets = Exergue.excerpt(checked, excerpt.get(), pdf);
        if (sheets.isPresent()) {
            lay(new PageSet(nextSet(), pdf.toByteArray(), sheets.get()), excerpt.get(), anchor);
        }
    }

    private synchronized void lay(PageSet stretch, Excerpt excerpt, String anchor) {
        int blank = excerpt.blank();
        int end = 1 + stretch.sheets().areas().stream().filter(area -> area.anchor().equals(anchor)).mapToInt(Area::page)
                .max().orElse(blank);
        sets.put(stretch.id(), stretch);
        laidOver.add(new Overlay(excerpt.firstPage(), stretch.leaves(blank, end, true)));
        List<Leaf> leaves = whole.orElseThrow().leaves(0, whole.get().count(), false);
        for (Overlay overlay : laidOver) {
            leaves = over(leaves, overlay);
        }
        show(now.with(leaves));
    }

    private static List<Leaf> over(List<Leaf> before, Overlay overlay) {
        List<Leaf> leaves = new ArrayList<>(before.subList(0, Math.min(before.size(), overlay.first())));
        leaves.addAll(overlay.leaves());
        leaves.addAll(before.subList(Math.min(before.size(), leaves.size()), before.size()));
        return leaves;
    }

    /** @param current asked last of all, whether this book is still wanted */
    void showWhole(Checked checked, Made made, byte[] pdf, BooleanSupplier current) throws IOException {
        if (made.publication().isEmpty()) {
            showStopped(shown(checked, made.findings()), current);
            return;
        }
        Publication publication = made.publication().get();
        PageSet set = new PageSet(nextSet(), pdf, publication.sheets());
        synchronized (this) {
            if (!current.getAsBoolean()) {
                close(set);
                return;
            }
            whole = Optional.of(set);
            sets.put(set.id(), set);
            laidOver.clear();
            show(now.whole(set.leaves(0, set.count(), false), Known.all(publication.book(), checked.catalogue().orElseThrow()),
                    shown(checked, made.findings())));
        }
        readWords(set, current);
    }

    /** So that they are found at once. */
    private static void readWords(PageSet set, BooleanSupplier current) {
        try {
            for (int page = 0; page < set.count() && current.getAsBoolean(); page++) {
                set.lines(page);
            }
        } catch (IOException | RuntimeException e) {
            return; // whoever looks at that page is told
        }
    }

    private synchronized void showStopped(Findings findings, BooleanSupplier current) {
        if (current.getAsBoolean()) {
            show(now.stopped(findings));
        }
    }

    /** What stands in the files of exact find-spots is quoted in no browser. */
    private static Findings shown(Checked checked, Findings findings) {
        return HeldBackFindings.of(findings, checked.source());
    }

    /** @param current whether it still is of what is wanted */
    synchronized void trouble(String sentence, BooleanSupplier current) {
        if (current.getAsBoolean() && !now.trouble().equals(Optional.of(sentence))) {
            show(now.inTrouble(sentence));
        }
    }

    /** Told only as long as there are no pages: later ones come soon. @param what nothing, if it is done */
    synchronized void doing(String what, BooleanSupplier current) {
        if (current.getAsBoolean() && now.leaves().isEmpty() && !now.doing().equals(what)) {
            show(now.at(what));
        }
    }

    private synchronized int nextSet() {
        return nextSet++;
    }

    private static void close(PageSet set) {
        try {
            set.close();
        } catch (IOException e) {
            return; // its bytes are in memory: there is nothing that could fail
        }
    }

    private void show(Proof next) {
        now = next;
        lately.addLast(now.leaves().stream().map(Leaf::set).collect(Collectors.toSet()));
        if (lately.size() > KEPT_PROOFS) {
            lately.removeFirst();
        }
        Set<Integer> wanted = new TreeSet<>();
        lately.forEach(wanted::addAll);
        whole.ifPresent(set -> wanted.add(set.id()));
        List<Integer> old = sets.keySet().stream().filter(id -> !wanted.contains(id)).toList();
        old.stream().map(sets::remove).forEach(ProofTable::close);
        notifyAll();
    }

    @Override
    public synchronized void close() {
        sets.values().forEach(ProofTable::close);
        sets.clear();
    }
}
