package exergue.photo;

import java.io.IOException;

/**
 * How much memory photographs may take while they are worked on, all threads together. Nobody waits for a second share while he
 * holds one that others wait for, but in this order: first for the bytes of a file, then for its pixels; whoever has both
 * finishes. So none waits for ever.
 */
public final class Workroom {

    /** Of the whole: for the bytes of files. */
    private static final int PART_OF_FILES = 5;

    private final Space files;
    private final Space pictures;

    /** @param bytes most memory that may be taken, but that one photograph alone may always take what it needs */
    public Workroom(long bytes) {
        this.files = new Space(bytes / PART_OF_FILES);
        this.pictures = new Space(bytes - bytes / PART_OF_FILES);
    }

    /** Waits until there is room for the bytes of a file. */
    public Share forFile(long bytes) throws IOException {
        return files.take(bytes);
    }

    /** Waits until there is room for the pixels of a picture and all that is reckoned from them; {@link PictureReader#memory}. */
    public Share forPicture(long bytes) throws IOException {
        return pictures.take(bytes);
    }

    /** What one of those at work has taken; given back by closing, once. */
    public interface Share extends AutoCloseable {
        @Override
        void close();
    }

    private static final class Space {

        private final long all;
        private long taken;

        Space(long all) {
            this.all = all;
        }

        synchronized Share take(long bytes) throws IOException {
            try {
                while (taken > 0 && taken + bytes > all) {
                    wait();
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IOException("stopped while photographs were worked on", e);
            }
            taken += bytes;
            return () -> giveBack(bytes);
        }

        private synchronized void giveBack(long bytes) {
            taken -= bytes;
            notifyAll();
        }
    }
}
