package exergue.cite;

/** "2" as an edition is "2nd"; the library leaves the figure as it is, whatever a style says. */
final class Ordinals {

    private Ordinals() { }

    /** @param language of the book; an edition in words stays as it is */
    static String of(String edition, String language) {
        if (!edition.matches("[0-9]{1,3}")) {
            return edition;
        }
        return edition + switch (language) {
            case "fr" -> edition.equals("1") ? "re" : "e";
            case "de" -> ".";
            case "it" -> "a";
            default -> english(Integer.parseInt(edition));
        };
    }

    private static String english(int number) {
        if (number % 100 >= 11 && number % 100 <= 13) {
            return "th";
        }
        return switch (number % 10) {
            case 1 -> "st";
            case 2 -> "nd";
            case 3 -> "rd";
            default -> "th";
        };
    }
}
