package exergue.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Locale;

/** What a failed disk says, in one plain sentence that names the path. */
final class DiskTrouble {

    private DiskTrouble() { }

    static String explain(IOException failure) {
        if (!(failure instanceof FileSystemException trouble) || trouble.getFile() == null) {
            return "Reading or writing failed: " + failure.getMessage() + ".";
        }
        String path = trouble.getFile();
        if (failure instanceof AccessDeniedException) {
            return "“" + path + "” may not be read or written: permission is denied.";
        }
        if (failure instanceof NoSuchFileException) {
            return "“" + path + "” is not there and cannot be made"
                    + (trouble.getReason() == null ? "." : ": " + trouble.getReason() + ".");
        }
        if (failure instanceof FileAlreadyExistsException || failure instanceof NotDirectoryException) {
            return "“" + path + "” is a file; a folder was expected there.";
        }
        if (failure instanceof DirectoryNotEmptyException) {
            return "“" + path + "” is a folder; a file was to be written there.";
        }
        return fromReason(path, trouble.getReason());
    }

    private static String fromReason(String path, String reason) {
        String known = reason == null ? "" : reason.toLowerCase(Locale.ROOT);
        if (known.contains("no space left")) {
            return "The disk is full: “" + path + "” could not be written.";
        }
        if (known.contains("read-only")) {
            return "“" + path + "” is on a disk that can only be read.";
        }
        if (known.contains("not a directory")) {
            return "“" + path + "” leads through a file; a folder was expected there.";
        }
        return "“" + path + "” could not be read or written" + (known.isEmpty() ? "." : ": " + reason + ".");
    }
}
