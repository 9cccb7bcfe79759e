package exergue.photo;

import java.util.List;

/** What came of looking for coins on a picture. */
public sealed interface Outlined {

    /**
     * @param outlines   one side, or obverse and reverse side by side from left to right
     * @param confidence 0 to 1: the part of the edge that stands out clearly from the ground
     */
    record Found(List<Outline> outlines, double confidence, Background background) implements Outlined {
        public Found {
            outlines = List.copyOf(outlines);
        }
    }

    /** No outline rather than a guess. */
    record Refused(Reason reason) implements Outlined { }

    /** Why no outline is given. */
    enum Reason {
        TOO_SMALL("the picture is too small to measure on", "Give a larger one: a coin should be at least 100 pixels wide."),
        GROUND_NOT_PLAIN("what the coin lies on is not one plain ground",
                "Photograph the coin on plain paper or card, with some of it to be seen all round, and even light."),
        NO_CONTRAST("the coin does not stand out from what it lies on",
                "Photograph it on a ground that is clearly lighter, darker or of another colour."),
        CUT_BY_FRAME("the coin is cut by the edge of the picture", "Leave some ground to be seen all round the coin."),
        SEVERAL_OBJECTS("there are more things on the picture than one coin, or its two sides side by side",
                "Take away what is not the coin, or cut the picture; a scale bar may stay."),
        TOUCHING("the coin touches another coin or thing, or their shadows run together",
                "Leave some ground to be seen between the two sides."),
        BAR_TOUCHING("the scale bar touches the coin", "Leave some ground to be seen between the coin and the bar."),
        EDGE_UNCLEAR("too much of the coin’s edge cannot be told from what it lies on or from its shadow",
                "Photograph it on a ground of another shade, with light that throws no deep shadow.");

        private final String words;
        private final String remedy;

        Reason(String words, String remedy) {
            this.words = words;
            this.remedy = remedy;
        }

        /** As the end of a sentence: "the coin is cut by the edge of the picture". */
        public String words() {
            return words;
        }

        /** What the photographer can do: a full sentence. */
        public String remedy() {
            return remedy;
        }
    }
}
