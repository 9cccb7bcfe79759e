package exergue.review.git;

import java.util.concurrent.TimeUnit;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/**
 * The library's view of the machine, kept to the repository itself. By default it would start the git program to ask
 * for its configuration, and write files into the repository to see how finely the disk keeps time.
 */
final class StillReader extends SystemReader.Delegate {

    private StillReader(SystemReader ofMachine) {
        super(ofMachine);
    }

    /** The library has one reader for the whole process; it is exchanged once. */
    static synchronized void please() {
        if (!(SystemReader.getInstance() instanceof StillReader)) {
            SystemReader.setInstance(new StillReader(SystemReader.getInstance()));
        }
    }

    @Override
    public FileBasedConfig openUserConfig(Config parent, FS fs) {
        return new NothingSaid(parent, fs);
    }

    @Override
    public FileBasedConfig openSystemConfig(Config parent, FS fs) {
        return new NothingSaid(parent, fs);
    }

    @Override
    public FileBasedConfig openJGitConfig(Config parent, FS fs) {
        return new NothingSaid(parent, fs);
    }

    /** Empty, but for how finely the disk keeps time: two seconds, the coarsest there is, so that it is not tried out. */
    private static final class NothingSaid extends FileBasedConfig {

        private static final String DISKS = "filesystem";
        private static final long SECONDS = 2;

        NothingSaid(Config parent, FS fs) {
            super(parent, null, fs);
        }

        @Override
        public void load() {
            // There is no file.
        }

        @Override
        public boolean isOutdated() {
            return false;
        }

        @Override
        public long getTimeUnit(String section, String subsection, String name, long usual, TimeUnit unit) {
            return section.equals(DISKS) ? unit.convert(SECONDS, TimeUnit.SECONDS)
                    : super.getTimeUnit(section, subsection, name, usual, unit);
        }
    }
}
