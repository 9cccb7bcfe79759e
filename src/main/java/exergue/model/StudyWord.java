package exergue.model;

/** Words of tables, charts and figures that are reckoned from the coins, in every language. In braces: what is filled in. */
public enum StudyWord implements Worded {

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
    WEIGHT_NOTE_BRIEF("All in grams. Coins whose weight damage has changed are left out. Quartiles by definition 8 of Hyndman and Fan 1996.",
            "En grammes. Les monnaies dont un dommage a changé le poids sont écartées. Quartiles selon la définition 8 de Hyndman et Fan 1996.",
            "Alles in Gramm. Münzen, deren Gewicht durch Beschädigung verändert ist, sind ausgeschieden. Quartile nach Definition 8 von "
            + "Hyndman und Fan 1996.",
            "In grammi. Sono escluse le monete il cui peso è stato alterato da un danno. Quartili secondo la definizione 8 di Hyndman e Fan 1996."),

    GROUPS("Groups", "Groupes", "Gruppen", "Gruppi"),
    MEDIAN_DIFFERENCE("difference of medians (g)", "écart des médianes (g)", "Differenz der Mediane (g)", "differenza delle mediane (g)"),
    SHARE("first heavier", "premier plus lourd", "erste schwerer", "primo più pesante"),
    COMPARISON_NOTE("U and its p by Mann and Whitney 1947, D and its p by Kolmogorov and Smirnov, both two-sided; with an asterisk by their "
            + "approximations for large samples, otherwise counted exactly. “First heavier” is the share of all pairs of coins, one from each "
            + "group, in which that of the first is the heavier. The p are not corrected for the number of comparisons; a difference is "
            + "spoken of where p is below 0.05.",
            "U et son p selon Mann et Whitney 1947, D et son p selon Kolmogorov et Smirnov, tous deux bilatéraux\u202F; avec un astérisque "
            + "selon leurs approximations pour grands échantillons, sinon par dénombrement exact. «\u00A0Premier plus lourd\u00A0»\u00A0: part de "
            + "toutes les paires de monnaies, une de chaque groupe, où celle du premier est la plus lourde. Les p ne sont pas corrigés pour "
            + "le nombre des comparaisons\u202F; on parle d’un écart quand p est inférieur à 0,05.",
            "U und sein p nach Mann und Whitney 1947, D und sein p nach Kolmogorow und Smirnow, beide zweiseitig; mit Stern nach ihren Näherungen "
            + "für große Stichproben, sonst genau ausgezählt. „Erste schwerer“ ist der Anteil aller Münzpaare, je eine aus jeder Gruppe, in denen "
            + "die der ersten die schwerere ist. Die p sind nicht für die Zahl der Vergleiche berichtigt; von einem Unterschied ist die Rede, wo p "
            + "unter 0,05 liegt.",
            "U e il suo p secondo Mann e Whitney 1947, D e il suo p secondo Kolmogorov e Smirnov, entrambi bilaterali; con asterisco secondo le "
            + "approssimazioni per grandi campioni, altrimenti per conteggio esatto. «Primo più pesante» è la quota di tutte le coppie di monete, "
            + "una per gruppo, in cui quella del primo è la più pesante. I p non sono corretti per il numero dei confronti; si parla di una "
            + "differenza dove p è inferiore a 0,05."),
    HEAVIER("{first} is heavier than {second}: of two coins, one from each, that of the first is the heavier {share} times in a hundred, which "
            + "chance alone would seldom bring about.",
            "{first} est plus lourd que {second}\u00A0: de deux monnaies, une de chaque groupe, celle du premier est la plus lourde {share} fois "
            + "sur cent, ce que le hasard seul produirait rarement.",
            "{first} ist schwerer als {second}: Von zwei Münzen, je eine aus jeder Gruppe, ist die der ersten in {share} von hundert Fällen die "
            + "schwerere, was der Zufall allein selten zustande brächte.",
            "{first} è più pesante di {second}: di due monete, una per gruppo, quella del primo è la più pesante {share} volte su cento, il che il "
            + "caso da solo produrrebbe di rado."),
    NO_DIFFERENCE("{first} and {second}: no difference that chance alone could not bring about.",
            "{first} et {second}\u00A0: aucun écart que le hasard seul ne puisse produire.",
            "{first} und {second}: kein Unterschied, den nicht der Zufall allein zustande brächte.",
            "{first} e {second}: nessuna differenza che il caso da solo non possa produrre."),
    OTHERS_ALIKE("Between the other groups there is no difference that chance alone could not bring about.",
            "Entre les autres groupes, aucun écart que le hasard seul ne puisse produire.",
            "Zwischen den übrigen Gruppen gibt es keinen Unterschied, den nicht der Zufall allein zustande brächte.",
            "Fra gli altri gruppi nessuna differenza che il caso da solo non possa produrre."),
    NONE_DIFFER("Between no two of the groups is there a difference that chance alone could not bring about.",
            "Entre aucun des groupes il n’y a d’écart que le hasard seul ne puisse produire.",
            "Zwischen keinen zwei der Gruppen gibt es einen Unterschied, den nicht der Zufall allein zustande brächte.",
            "Fra nessuno dei gruppi c’è una differenza che il caso da solo non possa produrre."),
    OTHERWISE_SPREAD("{first} and {second}: neither tends to be the heavier, but their weights are differently spread.",
            "{first} et {second}\u00A0: aucun des deux ne tend à être plus lourd, mais leurs poids sont autrement répartis.",
            "{first} und {second}: Keine ist im Ganzen die schwerere, doch sind ihre Gewichte verschieden verteilt.",
            "{first} e {second}: nessuno dei due tende a essere più pesante, ma i loro pesi sono distribuiti diversamente."),
    TOO_FEW_TO_COMPARE("{first} and {second}: too few coins to tell.", "{first} et {second}\u00A0: trop peu de monnaies pour conclure.",
            "{first} und {second}: zu wenige Münzen für ein Urteil.", "{first} e {second}: troppo poche monete per giudicare."),

    COIN("Coin", "Monnaie", "Münze", "Moneta"),
    OUTLIER_NOTE("Of {n} coins these lie further than 3.5 from the median of their group by the modified z of Iglewicz and Hoaglin 1993, "
            + "0.6745 (weight − median) / MAD.",
            "Sur {n} monnaies, celles-ci s’écartent de la médiane de leur groupe de plus de 3,5 selon le z modifié d’Iglewicz et Hoaglin 1993, "
            + "0,6745 (poids − médiane) / MAD.",
            "Von {n} Münzen liegen diese nach dem modifizierten z von Iglewicz und Hoaglin 1993, 0,6745 (Gewicht − Median) / MAD, um mehr als 3,5 "
            + "vom Median ihrer Gruppe entfernt.",
            "Di {n} monete queste distano più di 3,5 dalla mediana del loro gruppo secondo lo z modificato di Iglewicz e Hoaglin 1993, "
            + "0,6745 (peso − mediana) / MAD."),
    NO_OUTLIERS("None of {n} coins lies further than 3.5 from the median of its group by the modified z of Iglewicz and Hoaglin 1993.",
            "Aucune des {n} monnaies ne s’écarte de la médiane de son groupe de plus de 3,5 selon le z modifié d’Iglewicz et Hoaglin 1993.",
            "Keine von {n} Münzen liegt nach dem modifizierten z von Iglewicz und Hoaglin 1993 um mehr als 3,5 vom Median ihrer Gruppe entfernt.",
            "Nessuna delle {n} monete dista più di 3,5 dalla mediana del suo gruppo secondo lo z modificato di Iglewicz e Hoaglin 1993."),

    STANDARD_HEAD("standard", "étalon", "Sollgewicht", "peso teorico"),
    PEAK_INTERVAL("95 % interval of the peak", "intervalle à 95\u202F% du pic", "95-%-Intervall des Gipfels", "intervallo al 95\u00A0% del picco"),
    DISTANCE("peak less standard", "pic moins étalon", "Gipfel minus Sollgewicht", "picco meno peso teorico"),
    DISTANCE_INTERVAL("its 95 % interval", "son intervalle à 95\u202F%", "dessen 95-%-Intervall", "il suo intervallo al 95\u00A0%"),
    WEAR_LOSS("lost by wear", "perdu par usure", "Verlust durch Abnutzung", "perso per usura"),
    DISTANCE_CORRECTED("peak less standard, wear made good", "pic moins étalon, usure compensée", "Gipfel minus Sollgewicht, Abnutzung ausgeglichen",
            "picco meno peso teorico, usura compensata"),
    STANDARD_NOTE("All in grams. The peak is that of a Gaussian kernel density with Silverman’s bandwidth; its interval is a percentile bootstrap "
            + "of 999 samples and wants ten coins.",
            "En grammes. Le pic est celui d’une densité à noyau gaussien avec la largeur de bande de Silverman\u202F; son intervalle est un bootstrap "
            + "par percentiles de 999 échantillons et demande dix monnaies.",
            "Alles in Gramm. Der Gipfel ist der einer Kerndichte mit Gaußkern und Silvermans Bandbreite; sein Intervall ist ein Perzentil-Bootstrap "
            + "aus 999 Stichproben und verlangt zehn Münzen.",
            "In grammi. Il picco è quello di una densità a nucleo gaussiano con l’ampiezza di banda di Silverman; il suo intervallo è un bootstrap "
            + "dei percentili di 999 campioni e richiede dieci monete."),
    WEAR_NOTE("Loss by wear is the author’s rate times the years in use.", "La perte par usure est le taux de l’auteur multiplié par les années d’usage.",
            "Der Verlust durch Abnutzung ist die Rate des Verfassers mal die Jahre im Umlauf.",
            "La perdita per usura è il tasso dell’autore per gli anni d’uso."),
    BELOW("{distance} below", "{distance} au-dessous de", "{distance} unter", "{distance} sotto"),
    ABOVE("{distance} above", "{distance} au-dessus de", "{distance} über", "{distance} sopra"),
    PEAK_BELOW("{name}: the peak lies {distance} g below {standard}, which is outside its interval.",
            "{name}\u00A0: le pic est à {distance} g au-dessous de {standard}, qui est hors de son intervalle.",
            "{name}: Der Gipfel liegt {distance} g unter {standard}, das außerhalb seines Intervalls ist.",
            "{name}: il picco è {distance} g al di sotto di {standard}, che è fuori dal suo intervallo."),
    PEAK_ABOVE("{name}: the peak lies {distance} g above {standard}, which is outside its interval.",
            "{name}\u00A0: le pic est à {distance} g au-dessus de {standard}, qui est hors de son intervalle.",
            "{name}: Der Gipfel liegt {distance} g über {standard}, das außerhalb seines Intervalls ist.",
            "{name}: il picco è {distance} g al di sopra di {standard}, che è fuori dal suo intervallo."),
    PEAK_AGREES("{name}: the peak lies {distance} g from {standard}, which is within its interval.",
            "{name}\u00A0: le pic est à {distance} g de {standard}, qui est dans son intervalle.",
            "{name}: Der Gipfel liegt {distance} g von {standard} entfernt, das innerhalb seines Intervalls ist.",
            "{name}: il picco dista {distance} g da {standard}, che è nel suo intervallo."),

    STEP("Weight", "Poids", "Gewicht", "Peso"),
    TOTAL("Total", "Total", "Summe", "Totale"),
    STEP_NOTE("In grams; each step takes in its lower limit.", "En grammes\u202F; chaque classe comprend sa limite inférieure.",
            "In Gramm; jede Stufe schließt ihre untere Grenze ein.", "In grammi; ogni classe comprende il suo limite inferiore."),
    HISTOGRAM_ALT("Histogram of weights in steps of {step} g.", "Histogramme des poids par classes de {step} g.",
            "Histogramm der Gewichte in Stufen von {step} g.", "Istogramma dei pesi per classi di {step} g."),
    PANEL_ALT("{name}: {n} coins from {least} to {greatest} g, most ({most}) from {from} to {to} g.",
            "{name}\u00A0: {n} monnaies de {least} à {greatest} g, la plupart ({most}) de {from} à {to} g.",
            "{name}: {n} Münzen von {least} bis {greatest} g, die meisten ({most}) von {from} bis {to} g.",
            "{name}: {n} monete da {least} a {greatest} g, la maggior parte ({most}) da {from} a {to} g."),
    MARK_ALT("Marked: {name}.", "Marqué\u00A0: {name}.", "Markiert: {name}.", "Segnato: {name}."),
    STANDARD("standard", "étalon", "Sollgewicht", "piede");

    private final InEveryLanguage words;

    StudyWord(String english, String french, String german, String italian) {
        this.words = new InEveryLanguage(english, french, german, italian);
    }

    @Override
    public String in(Language language) {
        return words.in(language);
    }
}
