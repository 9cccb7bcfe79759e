package exergue.model;

/** Words of tables and charts of die-axes and diameters, in every language. In braces: what is filled in. */
public enum AxisWord implements Worded {

    HOUR("Hour", "Heure", "Stunde", "Ora"),
    AXES("axes read", "axes relevés", "gelesene Stempelstellungen", "assi rilevati"),
    MEAN_AXIS("mean axis (h)", "axe moyen (h)", "mittlere Stempelstellung (h)", "asse medio (h)"),
    R("r", "r", "r", "r"),
    RAYLEIGH("p of one direction", "p d’une direction", "p für eine Richtung", "p per una direzione"),
    R_DOUBLED("r, angles doubled", "r, angles doublés", "r, Winkel verdoppelt", "r, angoli raddoppiati"),
    RAYLEIGH_DOUBLED("p of two opposite directions", "p de deux directions opposées", "p für zwei entgegengesetzte Richtungen",
            "p per due direzioni opposte"),
    CONCENTRATION("concentration", "concentration", "Konzentration", "concentrazione"),
    VERDICT("axis", "axe", "Stempelstellung", "asse"),
    FIXED("fixed", "fixe", "fest", "fisso"),
    LOOSELY_FIXED("loosely fixed", "à peu près fixe", "locker fest", "quasi fisso"),
    FIXED_OPPOSITE("fixed, in two opposite directions", "fixe, en deux directions opposées", "fest, in zwei entgegengesetzten Richtungen",
            "fisso, in due direzioni opposte"),
    LOOSELY_FIXED_OPPOSITE("loosely fixed, in two opposite directions", "à peu près fixe, en deux directions opposées",
            "locker fest, in zwei entgegengesetzten Richtungen", "quasi fisso, in due direzioni opposte"),
    RANDOM("random", "aléatoire", "regellos", "casuale"),
    TOO_FEW("too few to tell", "trop peu pour conclure", "zu wenige für ein Urteil", "troppo pochi per giudicare"),
    NOTE("r is the resultant length of the axes, 0 to 1, corrected for their being read in whole hours where they all are; p by Rayleigh’s test in "
            + "the approximation of Zar 2010 (27.4), from r as it is before the correction; doubling the angles tests for two opposite directions; "
            + "concentration of a von Mises distribution after Fisher 1993. An axis is called fixed where p is below 0.05 and its circular standard "
            + "deviation is no more than an hour; loosely fixed where only p is below 0.05; otherwise random, and without a mean.",
            "r est la longueur résultante des axes, de 0 à 1, corrigée de leur lecture en heures entières quand tous le sont\u202F; p selon le test de "
            + "Rayleigh dans l’approximation de Zar 2010 (27.4), d’après r avant correction\u202F; les angles doublés éprouvent deux directions opposées\u202F; "
            + "concentration d’une loi de von Mises selon Fisher 1993. Un axe est dit fixe quand p est inférieur à 0,05 et que son écart-type circulaire ne "
            + "dépasse pas une heure\u202F; à peu près fixe quand seul p est inférieur à 0,05\u202F; sinon aléatoire, et sans moyenne.",
            "r ist die resultierende Länge der Stempelstellungen, 0 bis 1, für die Ablesung in ganzen Stunden berichtigt, wo alle so abgelesen sind; p nach "
            + "Rayleighs Test in der Näherung von Zar 2010 (27.4), aus r vor der Berichtigung; verdoppelte Winkel prüfen auf zwei entgegengesetzte "
            + "Richtungen; Konzentration einer Von-Mises-Verteilung nach Fisher 1993. Fest heißt eine Stempelstellung, wenn p unter 0,05 liegt und ihre zirkuläre "
            + "Standardabweichung höchstens eine Stunde beträgt; locker fest, wenn nur p unter 0,05 liegt; sonst regellos und ohne Mittel.",
            "r è la lunghezza risultante degli assi, da 0 a 1, corretta per la lettura in ore intere dove tutti lo sono; p secondo il test di Rayleigh "
            + "nell’approssimazione di Zar 2010 (27.4), da r prima della correzione; gli angoli raddoppiati verificano due direzioni opposte; concentrazione "
            + "di una distribuzione di von Mises secondo Fisher 1993. Un asse si dice fisso dove p è inferiore a 0,05 e la deviazione standard circolare non "
            + "supera un’ora; quasi fisso dove solo p è inferiore a 0,05; altrimenti casuale, e senza media."),
    HALF_NOTE("An axis midway between two hours counts half for each.", "Un axe à mi-chemin entre deux heures compte pour moitié à chacune.",
            "Eine Stempelstellung zwischen zwei Stunden zählt für jede zur Hälfte.", "Un asse a metà fra due ore conta per metà in ciascuna."),
    ROSE_ALT("Roses of die-axes.", "Roses des axes.", "Rosen der Stempelstellungen.", "Rose degli assi."),
    DIAL_ALT("{name}, {n} coins: {counts}.", "{name}, {n} monnaies\u00A0: {counts}.", "{name}, {n} Münzen: {counts}.", "{name}, {n} monete: {counts}."),
    AT_HOUR("{count} at {hour} h", "{count} à {hour} h", "{count} bei {hour} h", "{count} a {hour} h"),

    WITHIN_HOUR("within an hour of the mean", "à une heure au plus de la moyenne", "höchstens eine Stunde vom Mittel", "entro un’ora dalla media"),
    FISHER("p", "p", "p", "p"),
    COMPARISON_NOTE("Axes no more than an hour from the hour nearest the mean of their own group (of its two opposite directions, where it has two); p by Fisher’s "
            + "exact test, two-sided.",
            "Axes à une heure au plus de l’heure la plus proche de la moyenne de leur propre groupe (de ses deux directions opposées, s’il en a deux)\u202F; p selon le test exact "
            + "de Fisher, bilatéral.",
            "Stempelstellungen höchstens eine Stunde von der dem Mittel nächsten Stunde der eigenen Gruppe (ihrer beiden entgegengesetzten Richtungen, wo sie zwei hat); p nach "
            + "Fishers exaktem Test, zweiseitig.",
            "Assi entro un’ora dall’ora più vicina alla media del proprio gruppo (delle sue due direzioni opposte, dove ne ha due); p secondo il test esatto di Fisher, "
            + "bilaterale."),
    STRICTER("{first} kept its axis more strictly than {second}.", "{first} a tenu son axe plus strictement que {second}.",
            "{first} hielt die Stempelstellung strenger ein als {second}.", "{first} ha mantenuto l’asse più rigorosamente di {second}."),
    AS_STRICT("{first} and {second}: no difference that chance alone could not bring about.",
            "{first} et {second}\u00A0: aucun écart que le hasard seul ne puisse produire.",
            "{first} und {second}: kein Unterschied, den nicht der Zufall allein zustande brächte.",
            "{first} e {second}: nessuna differenza che il caso da solo non possa produrre."),

    DIAMETER_AXIS("Diameter (mm)", "Diamètre (mm)", "Durchmesser (mm)", "Diametro (mm)"),
    DIAMETERS("coins measured", "monnaies mesurées", "gemessene Münzen", "monete misurate"),
    DIAMETER_NOTE("All in millimetres. Of a diameter with two figures their mean counts; coins whose outline damage has changed are left out. "
            + "Quartiles by definition 8 of Hyndman and Fan 1996.",
            "En millimètres. D’un diamètre à deux mesures, la moyenne compte\u202F; les monnaies dont un dommage a changé le contour sont écartées. "
            + "Quartiles selon la définition 8 de Hyndman et Fan 1996.",
            "Alles in Millimetern. Von einem Durchmesser mit zwei Werten zählt das Mittel; Münzen, deren Umriss durch Beschädigung verändert ist, sind "
            + "ausgeschieden. Quartile nach Definition 8 von Hyndman und Fan 1996.",
            "In millimetri. Di un diametro con due misure conta la media; sono escluse le monete il cui contorno è stato alterato da un danno. Quartili "
            + "secondo la definizione 8 di Hyndman e Fan 1996."),
    SCATTER_ALT("Weight over diameter, a mark for each coin.", "Poids selon le diamètre, une marque par monnaie.",
            "Gewicht über Durchmesser, ein Zeichen je Münze.", "Peso secondo il diametro, un segno per moneta."),
    SERIES_ALT("{name}: {n} coins, {from} to {to} mm and {least} to {greatest} g.", "{name}\u00A0: {n} monnaies, {from} à {to} mm et {least} à {greatest} g.",
            "{name}: {n} Münzen, {from} bis {to} mm und {least} bis {greatest} g.", "{name}: {n} monete, {from} a {to} mm e {least} a {greatest} g.");

    private final InEveryLanguage words;

    AxisWord(String english, String french, String german, String italian) {
        this.words = new InEveryLanguage(english, french, german, italian);
    }

    @Override
    public String in(Language language) {
        return words.in(language);
    }
}
