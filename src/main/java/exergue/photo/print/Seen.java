package exergue.photo.print;

import exergue.photo.Outline;
import exergue.photo.Outlined;
import java.util.List;
import java.util.Optional;

/** What there is to be seen on the picture in one file; all that has to be known of it until it is cut. */
sealed interface Seen {

    /**
     * A picture.
     *
     * @param asItIs  whether its bytes can be printed without being unpacked
     * @param grey    whether it has no colours
     * @param sides   of a coin: none where no outline was found, two from left to right where it shows both
     * @param refused why there are none
     */
    record Shown(int width, int height, boolean asItIs, boolean grey, List<Side> sides, Optional<Outlined.Reason> refused)
            implements Seen {
        public Shown {
            sides = List.copyOf(sides);
        }
    }

    /** @param outline in pixels of the picture */
    record Side(Outline outline, Tone tone) { }

    /** @param words why it cannot be read, as the end of a sentence */
    record Unreadable(String words) implements Seen { }
}
