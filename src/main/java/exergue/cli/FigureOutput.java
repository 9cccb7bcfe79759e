package exergue.cli;

import exergue.exchange.FigureCsv;
import exergue.files.Delivery;
import exergue.study.chart.ChartDrawing;
import exergue.study.figure.Exhibit;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Plot;
import exergue.study.figure.Request;
import exergue.study.figure.Subject;
import exergue.study.group.Coins;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gives out tables and charts of groups of coins: on the screen, or as files. */
final class FigureOutput {

    private static final String NOTHING = "Of these coins there is nothing to show.";

    private final Terminal terminal;
    private final Request request;

    FigureOutput(Terminal terminal, Request request) {
        this.terminal = terminal;
        this.request = request;
    }

    /** One form of one subject. */
    record Wanted(Subject subject, String form) { }

    /** Tables, each with its notes; of a chart the figures that it draws. */
    void print(List<Wanted> wanted) {
        for (Wanted one : wanted) {
            Optional<Exhibit> exhibit = tooMany(one) ? Optional.empty() : one.subject().show(one.form(), request);
            terminal.out().println((one == wanted.get(0) ? "" : "\n") + one.subject().word() + ", " + one.form());
            if (exhibit.isEmpty()) {
                terminal.out().println(tooMany(one) ? "There are " + request.groups().size() + " groups, and no more than "
                        + one.subject().most(one.form()) + " are compared with each other." : NOTHING);
                continue;
            }
            FigureTable table = exhibit.get().table();
            if (!table.rows().isEmpty()) {
                terminal.out().print(TextTable.of(lines(table), table.align()));
            }
            exhibit.get().notes().forEach(note -> terminal.out().println(note.replace('\u00A0', ' ')));
        }
    }

    private boolean tooMany(Wanted one) {
        return one.form().equals(Subject.COMPARISON) && request.groups().size() > one.subject().most(one.form());
    }

    /** A CSV file for each table. */
    void tables(List<Wanted> wanted, Path folder) throws IOException {
        try (Delivery delivery = new Delivery(folder)) {
            for (Wanted one : wanted) {
                Optional<Exhibit> exhibit = tooMany(one) ? Optional.empty() : one.subject().show(one.form(), request);
                if (exhibit.isPresent() && !exhibit.get().table().rows().isEmpty()) {
                    delivery.write(name(one, "") + ".csv", FigureCsv.of(exhibit.get().table()).getBytes(StandardCharsets.UTF_8));
                }
            }
            tell(delivery.deliver());
        }
    }

    /** An SVG file for each chart; several where one has no room for all groups. */
    void charts(List<Wanted> wanted, Path folder) throws IOException {
        try (Delivery delivery = new Delivery(folder)) {
            for (Wanted one : wanted) {
                List<Coins> groups = request.groups();
                int together = Math.min(one.subject().most(one.form()), groups.size());
                for (int from = 0; from < groups.size(); from += together) {
                    List<Coins> some = groups.subList(from, Math.min(groups.size(), from + together));
                    Optional<Exhibit> exhibit = one.subject().show(one.form(), new Request(some, request.steps(), request.wording()));
                    if (exhibit.isPresent() && exhibit.get() instanceof Plot plot) {
                        delivery.write(name(one, groups.size() > together ? "-" + (from / together + 1) : "") + ".svg",
                                ChartDrawing.file(plot.chart(), plot.alternative()).getBytes(StandardCharsets.UTF_8));
                    }
                }
            }
            tell(delivery.deliver());
        }
    }

    private static String name(Wanted one, String number) {
        return one.subject().word() + "-" + one.form() + number;
    }

    private void tell(List<Path> files) {
        files.forEach(file -> terminal.out().println(file));
        if (files.isEmpty()) {
            terminal.out().println(NOTHING);
        }
    }

    private static List<List<String>> lines(FigureTable table) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(texts(table.head()));
        table.rows().forEach(row -> lines.add(texts(row)));
        return lines;
    }

    private static List<String> texts(List<FigureTable.Cell> cells) {
        return cells.stream().map(cell -> cell.coins().isEmpty() ? cell.text() : String.join(", ", cell.coins())).toList();
    }
}
