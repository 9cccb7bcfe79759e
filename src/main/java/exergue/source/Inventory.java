package exergue.source;

import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.finding.Place;
import exergue.source.keys.FileKind;
import exergue.source.text.Notebook;
import exergue.source.works.WorksReader;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** What lies in the folder, against what is read of it. */
final class Inventory {

    /** What an editor makes of lk-1.yaml: a .yml, a text file, or no ending at all. */
    private static final Pattern ENTRY_ENDING = Pattern.compile("(?i)(\\.(ya?ml|txt))+$");
    private static final Pattern ENTRY_BY_ANOTHER_NAME = Pattern.compile("(?i)(.*/)?[^./]+(\\.(ya?ml|txt))*");

    /** What spreadsheets call a sheet saved as text. */
    private static final Pattern LIST_ENDING = Pattern.compile("(?i)\\.(csv|tsv|txt)$");

    private final Set<String> files;
    private final Notebook notebook;

    Inventory(Set<String> files, Notebook notebook) {
        this.files = files;
        this.notebook = notebook;
    }

    void reportNoCatalogue() {
        String name = FileKind.CATALOGUE.where();
        Optional<String> deeper = files.stream().filter(file -> file.endsWith("/" + name)).findFirst();
        Optional<String> near = NearMiss.of(name, files);
        String remedy;
        if (deeper.isPresent()) {
            String folder = deeper.get().substring(0, deeper.get().length() - name.length() - 1);
            remedy = "There is one in the folder “" + folder + "” inside it: name that folder.";
        } else if (near.isPresent()) {
            remedy = "Rename “" + near.get() + "” to " + name + ".";
        } else {
            remedy = "Name the folder that holds it, or lay out a small catalogue with: start DIR.";
        }
        notebook.add(Finding.of(FileCodes.NO_CATALOGUE_FILE, Place.ofFile(name), "",
                files.isEmpty() ? "The folder is empty; a catalogue begins with the file " + name + "."
                        : "The folder has no " + name + ", with which every catalogue begins.", remedy));
    }

    /** @param templates the folder of the catalogue's own templates, which are read elsewhere */
    void reportUnread(Set<String> seen, Optional<String> templates) {
        for (String file : files) {
            boolean elsewhere = templates.filter(folder -> file.startsWith(folder + "/")).isPresent();
            if (!seen.contains(file) && !elsewhere) {
                unread(file);
            }
        }
    }

    private void unread(String file) {
        if (file.startsWith("chapters/") && file.endsWith(".md")) {
            notebook.add(Finding.of(FileCodes.CHAPTER_NOT_IN_BOOK, Place.ofFile(file), "",
                    "This chapter is not among the parts of the book, so it is not printed.",
                    "Add “" + file + "” to the parts in " + FileKind.CATALOGUE.where() + ", or leave it if it is not ready."));
        } else if (file.endsWith(".yml") || file.endsWith(".yaml") || file.endsWith(".bib") || inFolderOfEntries(file)) {
            notebook.add(Finding.of(FileCodes.FILE_NOT_READ, Place.ofFile(file), "",
                    "Nothing reads this file, so nothing of it is printed.", remedy(file)));
        }
    }

    private static boolean inFolderOfEntries(String file) {
        return file.startsWith(FileKind.COIN.where()) || file.startsWith(FileKind.TYPE.where());
    }

    private String remedy(String file) {
        String list = file.replaceFirst("\\.yaml$", "");
        if (file.endsWith(".yaml") && files.stream().anyMatch(other -> other.startsWith(list + ".") && LIST_ENDING.matcher(other).find())) {
            return "If it says how the list beside it is read, put both into the folder " + FileKind.LISTS + ".";
        }
        if (file.endsWith(".bib")) {
            return "If it holds the works that are cited, call it " + WorksReader.BIB + " and put it beside catalogue.yaml.";
        }
        if (inFolderOfEntries(file) && !ENTRY_BY_ANOTHER_NAME.matcher(file).matches()) {
            return "Only entries, whose names end in .yaml, are read here. Move it to another folder, such as notes/, where nothing looks for entries.";
        }
        if (file.endsWith(".yml") || inFolderOfEntries(file)) {
            String stem = ENTRY_ENDING.matcher(file).replaceFirst("");
            return "If it is an entry, rename it to " + stem + ".yaml; if not, move it out of the folder.";
        }
        int slash = file.indexOf('/');
        String start = slash < 0 ? file : file.substring(0, slash + 1);
        List<String> known = FileKind.all().stream().map(FileKind::where).toList();
        return NearMiss.of(start, known).map(near -> "Did you mean “" + near + file.substring(start.length()) + "”?")
                .orElse("Types belong in types/, coins in coins/; the other files are "
                        + String.join(", ", known.stream().filter(where -> !where.endsWith("/")).toList()) + ".");
    }
}
