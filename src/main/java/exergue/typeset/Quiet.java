package exergue.typeset;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Keeps the libraries' own logs from the reader of the command line. What the page engine has to say still reaches
 * us as diagnostics, which it only makes while its log is switched on; so the log is given to a listener that does
 * nothing.
 */
final class Quiet {

    /** Held here because the platform forgets the level of a logger that nobody holds. */
    private static final List<Logger> SILENCED = List.of(
            Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox"),
            Logger.getLogger("freemarker"));

    private Quiet() { }

    static synchronized void please() {
        SILENCED.forEach(logger -> logger.setLevel(Level.OFF));
        XRLog.setLoggingEnabled(true);
        XRLog.setLoggerImpl(new Listener());
    }

    private static final class Listener implements XRLogger {

        @Override
        public void log(String where, Level level, String message) {
            // Said again as a diagnostic.
        }

        @Override
        public void log(String where, Level level, String message, Throwable cause) {
            // Said again as a diagnostic.
        }

        @Override
        public void setLevel(String where, Level level) {
            // There is nothing to hear at any level.
        }

        @Override
        public boolean isLogLevelEnabled(Diagnostic diagnostic) {
            return false;
        }
    }
}
