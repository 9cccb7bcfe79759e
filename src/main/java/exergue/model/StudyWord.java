package exergue.model;

/** Words of tables, charts and figures that are reckoned from the coins, in every language. In braces: what is filled in. */
public enum StudyWord {

    /** Between two figures, one of which is below nought. */
    TO("to", "à", "bis", "a"),
    GROUP("Group", "Groupe", "Gruppe", "Gruppo"),
    N("n", "n", "n", "n"),
    /** Of one group in a chart. */
    NAME_AND_N("{name}, n = {n}", "{name}, n = {n}", "{name}, n = {n}", "{name}, n = {n}"),
    COINS_N("n = {n}", "n = {n}", "n = {n}", "n = {n}"),

    WEIGHT_AXIS("Weight (g)", "Poids (g)", "Gewicht (g)", "Peso (g)"),
    COUNTED("coins weighed", "monnaies pesées", "gewogene Münzen", "monete pesate"),
    LEFT_OUT("left out", "écartées", "ausgeschieden", "escluse"),
    MEAN("mean", "moyenne", "Mittelwert", "media"),
    MEDIAN("median", "médiane", "Median", "mediana"),
    LOWER_QUARTILE("lower quartile", "premier quartile", "unteres Quartil", "primo quartile"),
    UPPER_QUARTILE("upper quartile", "troisième quartile", "oberes Quartil", "terzo quartile"),
    QUARTILES("quartiles", "quartiles", "Quartile", "quartili"),
    LEAST("least", "minimum", "kleinster Wert", "minimo"),
    GREATEST("greatest", "maximum", "größter Wert", "massimo"),
    SPAN("least and greatest", "minimum et maximum", "kleinster und größter Wert", "minimo e massimo"),
    SD("standard deviation", "écart-type", "Standardabweichung", "deviazione standard"),
    SE("standard error of the mean", "erreur type de la moyenne", "Standardfehler des Mittelwerts", "errore standard della media"),
    MEAN_INTERVAL("95 % interval of the mean", "intervalle à 95\u202F% de la moyenne", "95-%-Intervall des Mittelwerts",
            "intervallo al 95\u00A0% della media"),
    MEDIAN_INTERVAL("95 % interval of the median", "intervalle à 95\u202F% de la médiane", "95-%-Intervall des Medians",
            "intervallo al 95\u00A0% della mediana"),
    PEAK("peak", "pic", "Gipfel", "picco"),
    BANDWIDTH("bandwidth of the peak", "largeur de bande du pic", "Bandbreite des Gipfels", "ampiezza di banda del picco"),

    WEIGHT_NOTE("All in grams. Coins whose weight damage has changed are left out. Quartiles by definition 8 of Hyndman and Fan 1996; "
            + "interval of the mean by Student’s t, of the median by order statistics; the peak is that of a Gaussian kernel density with "
            + "Silverman’s bandwidth.",
            "En grammes. Les monnaies dont un dommage a changé le poids sont écartées. Quartiles selon la définition 8 de Hyndman et Fan "
            + "1996\u202F; intervalle de la moyenne selon le t de Student, de la médiane selon les statistiques d’ordre\u202F; le pic est "
            + "celui d’une densité à noyau gaussien avec la largeur de bande de Silverman.",
            "Alles in Gramm. Münzen, deren Gewicht durch Beschädigung verändert ist, sind ausgeschieden. Quartile nach Definition 8 von "
            + "Hyndman und Fan 1996; Intervall des Mittelwerts nach Students t, des Medians nach Ordnungsstatistiken; der Gipfel ist der einer "
            + "Kerndichte mit Gaußkern und Silvermans Bandbreite.",
            "In grammi. Sono escluse le monete il cui peso è stato alterato da un danno. Quartili secondo la definizione 8 di Hyndman e Fan "
            + "1996; intervallo della media secondo la t di Student, della mediana secondo le statistiche d’ordine; il picco è quello di una "
            + "densità a nucleo gaussiano con l’ampiezza di banda di Silverman."),
    ALLOY("Alloy", "Alliage", "Legierung", "Lega"),
    DENSITY("Density (g/cm³)", "Densité (g/cm³)", "Dichte (g/cm³)", "Densità (g/cm³)"),
    FINENESS("Fineness (%)", "Titre (%)", "Feingehalt (%)", "Titolo (%)"),
    READING_ERROR("error of one coin", "erreur d’une monnaie", "Fehler einer Münze", "errore di una moneta"),
    BEYOND_ALLOY("not such an alloy", "pas un tel alliage", "keine solche Legierung", "non una tale lega"),
    FINENESS_NOTE("Share by weight of the first metal named, in whole per cents, from density; the error is half of what the steps of the "
            + "weighings leave open. It holds only for a sound alloy of the two metals.",
            "Part en poids du premier métal nommé, en pour cent entiers, d’après la densité\u202F; l’erreur est la moitié de ce que laissent "
            + "ouvert les échelons des pesées. Elle ne vaut que pour un alliage sain des deux métaux.",
            "Gewichtsanteil des zuerst genannten Metalls in ganzen Prozent, aus der Dichte; der Fehler ist die Hälfte dessen, was die Stufen "
            + "der Wägungen offen lassen. Er gilt nur für eine gesunde Legierung der beiden Metalle.",
            "Parte in peso del primo metallo nominato, in percento interi, dalla densità; l’errore è la metà di quanto lasciano aperto i "
            + "passi delle pesate. Vale solo per una lega sana dei due metalli."),
    STEP("Weight", "Poids", "Gewicht", "Peso"),
    TOTAL("Total", "Total", "Summe", "Totale"),
    STEP_NOTE("In grams; each step takes in its lower limit.", "En grammes\u202F; chaque classe comprend sa limite inférieure.",
            "In Gramm; jede Stufe schließt ihre untere Grenze ein.", "In grammi; ogni classe comprende il suo limite inferiore."),
    HISTOGRAM_ALT("Histogram of weights in steps of {step} g.", "Histogramme des poids par classes de {step} g.",
            "Histogramm der Gewichte in Stufen von {step} g.", "Istogramma dei pesi per classi di {step} g."),
    PANEL_ALT("{name}: {n} coins from {least} to {greatest} g, most ({most}) from {from} to {to} g.",
            "{name}\u202F: {n} monnaies de {least} à {greatest} g, la plupart ({most}) de {from} à {to} g.",
            "{name}: {n} Münzen von {least} bis {greatest} g, die meisten ({most}) von {from} bis {to} g.",
            "{name}: {n} monete da {least} a {greatest} g, la maggior parte ({most}) da {from} a {to} g."),
    MARK_ALT("Marked: {name}.", "Marqué\u202F: {name}.", "Markiert: {name}.", "Segnato: {name}."),
    STANDARD("standard", "étalon", "Sollgewicht", "piede");

    private final String english;
    private final String french;
    private final String german;
    private final String italian;

    StudyWord(String english, String french, String german, String italian) {
        this.english = english;
        this.french = french;
        this.german = german;
        this.italian = italian;
    }

    public String in(Language language) {
        return switch (language) {
            case ENGLISH -> english;
            case FRENCH -> french;
            case GERMAN -> german;
            case ITALIAN -> italian;
        };
    }
}
