package exergue.photo.print;

import exergue.files.MemoryTree;
import exergue.model.Catalogue;
import exergue.source.SourceReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** A small source with photographs, put together by a test. Everything in it is invented. */
public final class PicturedCatalogue {

    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private String direction = "greatest";

    public PicturedCatalogue() {
        text("catalogue.yaml", """
                title: Coins
                language: en
                parts: {front: [title], body: [catalogue], back: [plates]}
                """);
        text("mints.yaml", "lykaia: {name: Lykaia}\n");
        text("types/drachm.yaml", """
                id: drachm
                mint: lykaia
                denomination: drachm
                metal: silver
                obverse: {description: Head of a wolf r.}
                reverse: {description: Ear of barley}
                """);
    }

    public PicturedCatalogue measured(String along) {
        direction = along;
        return this;
    }

    public PicturedCatalogue text(String path, String text) {
        files.put(path, text.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    public PicturedCatalogue file(String path, byte[] bytes) {
        files.put(path, bytes);
        return this;
    }

    /** @param diameter as recorded, or empty; @param photograph its lines, without indentation */
    public PicturedCatalogue coin(String id, String diameter, String photograph) {
        return text("coins/" + id + ".yaml", "id: " + id + "\ntype: drachm\n"
                + (diameter.isEmpty() ? "" : "measured: {by: bench, weight: 3.87 g, diameter: " + diameter + ", axis: 6 h}\n")
                + "photograph:\n" + photograph.strip().indent(2));
    }

    public MemoryTree tree() {
        text("conventions.yaml", """
                bench:
                  title: measurements at the bench
                  by: A. Orr
                  weight: {instrument: balance, resolution: 0.01 g}
                  diameter: {instrument: callipers, direction: %s, resolution: 0.1 mm}
                  axis: {notation: hours, resolution: 1 h}
                """.replace("%s", direction));
        return new MemoryTree(files);
    }

    public Catalogue catalogue() throws IOException {
        return SourceReader.read(tree()).catalogue().orElseThrow();
    }
}
