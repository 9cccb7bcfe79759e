package exergue.model;

/** Words of the die study, in every language. In braces: what is filled in. */
public enum DieWord {

    OBVERSE("Obverse", "Droit", "Vorderseite", "Dritto"),
    REVERSE("Reverse", "Revers", "Rückseite", "Rovescio"),
    OBVERSE_DIES("Obverse dies", "Coins de droit", "Vorderseitenstempel", "Conii di dritto"),
    REVERSE_DIES("Reverse dies", "Coins de revers", "Rückseitenstempel", "Conii di rovescio"),
    COINS("Coins", "Monnaies", "Münzen", "Monete"),
    NUMBERS("No.", "N°", "Nr.", "N."),
    GROUP("Group", "Groupe", "Gruppe", "Gruppo"),

    COINS_WITH_DIE("coins whose die is known", "monnaies dont le coin est connu", "Münzen mit bekanntem Stempel",
            "monete di cui è noto il conio"),
    DIFFERENT_DIES("different dies", "coins différents", "verschiedene Stempel", "conii diversi"),
    OF_ONE_COIN("known from one coin", "connus par une seule monnaie", "durch eine einzige Münze bekannt", "noti da una sola moneta"),
    OF_TWO_COINS("from two", "par deux", "durch zwei", "da due"),
    OF_THREE_COINS("from three", "par trois", "durch drei", "da tre"),
    OF_MORE_COINS("from more", "par plus de trois", "durch mehr", "da più"),
    COINS_TO_A_DIE("coins to a die", "monnaies par coin", "Münzen je Stempel", "monete per conio"),
    COVERAGE("coverage", "couverture", "Abdeckung", "copertura"),
    COVERAGE_INTERVAL("its 95 % interval", "son intervalle à 95\u202F%", "ihr 95-%-Intervall", "suo intervallo al 95\u00A0%"),
    REVERSES_TO_OBVERSE("reverse dies to an obverse die", "coins de revers par coin de droit", "Rückseitenstempel je Vorderseitenstempel",
            "conii di rovescio per conio di dritto"),
    COVERAGE_NOTE("Coverage is the share of all coins struck that came from dies known here (Good 1953; its interval by Esty 1983).",
            "La couverture est la part des monnaies frappées dont les coins sont connus ici (Good 1953\u202F; intervalle selon Esty 1983).",
            "Die Abdeckung ist der Anteil aller geprägten Münzen, der aus hier bekannten Stempeln stammt (Good 1953; Intervall nach Esty 1983).",
            "La copertura è la parte delle monete battute i cui conii sono qui noti (Good 1953; intervallo secondo Esty 1983)."),

    ESTIMATE("Estimate", "Estimation", "Schätzung", "Stima"),
    ASSUMES("Assumes", "Hypothèse", "Annahme", "Ipotesi"),
    EQUAL_DIES("equal dies", "coins égaux", "gleiche Stempel", "conii uguali"),
    ASSUMES_EQUAL("every die struck as many coins", "chaque coin a frappé autant de monnaies", "jeder Stempel prägte gleich viele Münzen",
            "ogni conio ha battuto altrettante monete"),
    ASSUMES_AVERAGE("unseen dies struck as many as the others on average", "les coins inconnus ont frappé en moyenne autant que les autres",
            "unbekannte Stempel prägten im Mittel so viele wie die anderen", "i conii ignoti hanno battuto in media quanto gli altri"),
    ASSUMES_OBSERVED("dies varied as much as he found", "les coins variaient autant qu’il l’a constaté", "Stempel schwankten so, wie er es fand",
            "i conii variavano quanto egli ha osservato"),
    ASSUMES_SHAPE_TWO("negative binomial output, shape 2", "production binomiale négative, forme 2",
            "Leistung negativ binomial verteilt, Form 2", "produzione binomiale negativa, forma 2"),
    ASSUMES_GEOMETRIC("a die may break at any blow", "un coin peut se rompre à chaque coup", "ein Stempel kann bei jedem Schlag brechen",
            "un conio può rompersi a ogni colpo"),
    ASSUMES_NOTHING("nothing of the output; a least number", "rien sur la production\u202F; un minimum", "nichts über die Leistung; ein Mindestwert",
            "nulla sulla produzione; un minimo"),
    ESTIMATE_NOTE("In brackets the 95 % interval, where its author gives one. A dash: the formula has no value for this sample.",
            "Entre parenthèses, l’intervalle à 95\u202F%, là où son auteur en donne un. Un tiret\u00A0: la formule n’a pas de valeur pour cet échantillon.",
            "In Klammern das 95-%-Intervall, wo sein Autor eines angibt. Ein Strich: Die Formel hat für diese Stichprobe keinen Wert.",
            "Fra parentesi l’intervallo al 95\u00A0%, dove il suo autore ne dà uno. Una lineetta: la formula non ha valore per questo campione."),
    NO_DIE_TWICE("{dies}: no die is known from two coins.", "{dies}\u00A0: aucun coin n’est connu par deux monnaies.",
            "{dies}: Kein Stempel ist durch zwei Münzen bekannt.", "{dies}: nessun conio è noto da due monete."),
    FEWER_THAN_TWO("{dies}: with {ratio} coins to a die the estimates are weak.",
            "{dies}\u00A0: avec {ratio} monnaies par coin, les estimations sont faibles.",
            "{dies}: Bei {ratio} Münzen je Stempel sind die Schätzungen schwach.", "{dies}: con {ratio} monete per conio le stime sono deboli."),
    FEW_COINS("{dies}: {n} coins are few.", "{dies}\u00A0: {n} monnaies, c’est peu.", "{dies}: {n} Münzen sind wenig.", "{dies}: {n} monete sono poche."),

    COINS_OF_A_DIE("Coins of a die", "Monnaies d’un coin", "Münzen eines Stempels", "Monete di un conio"),
    CHAIN("Chain", "Chaîne", "Kette", "Catena"),
    PAIRS("Pairs", "Couples", "Paare", "Coppie"),
    NOT_LINKED("not linked", "sans liaison", "nicht verbunden", "senza legami"),
    USED_WITH("Used with", "Employé avec", "Verbunden mit", "Usato con"),
    DIE("Die", "Coin", "Stempel", "Conio"),
    STATE("State", "État", "Zustand", "Stato"),
    KNOWN_BY("Known by", "Reconnu à", "Kenntlich an", "Riconosciuto da"),
    EARLIER_STATE_NOTE("1 is the earliest state known. A die coupled with an earlier state came before one coupled only with a later one.",
            "1 est l’état le plus ancien connu. Un coin couplé avec un état ancien précède celui qui n’est couplé qu’avec un état plus récent.",
            "1 ist der früheste bekannte Zustand. Ein Stempel, der mit einem früheren gekoppelt ist, geht dem voran, der nur mit einem späteren "
            + "gekoppelt ist.",
            "1 è lo stato più antico noto. Un conio accoppiato con uno stato più antico precede quello accoppiato solo con uno più recente."),
    STATES_DISAGREE("The states contradict each other at {dies}.", "Les états se contredisent pour {dies}.",
            "Die Zustände widersprechen sich bei {dies}.", "Gli stati si contraddicono per {dies}."),
    SEVERAL_COINS("{die} ({n})", "{die} ({n})", "{die} ({n})", "{die} ({n})"),

    DIAGRAM_ALT("Link diagram, obverse dies above, reverse dies below. {chains}",
            "Diagramme des liaisons, coins de droit en haut, coins de revers en bas. {chains}",
            "Diagramm der Stempelverbindungen, Vorderseitenstempel oben, Rückseitenstempel unten. {chains}",
            "Diagramma dei legami, conii di dritto in alto, conii di rovescio in basso. {chains}"),
    CHAIN_ALT("Chain {number}: {links}.", "Chaîne {number}\u00A0: {links}.", "Kette {number}: {links}.", "Catena {number}: {links}."),
    LINK_ALT("{die} with {partners}", "{die} avec {partners}", "{die} mit {partners}", "{die} con {partners}"),
    DIAGRAM_NOTE("Obverse dies above, reverse dies below; a heavier line with a figure stands for so many coins of one pair.",
            "Coins de droit en haut, coins de revers en bas\u202F; un trait plus fort avec un chiffre vaut autant de monnaies d’un même couple.",
            "Vorderseitenstempel oben, Rückseitenstempel unten; ein stärkerer Strich mit einer Zahl steht für so viele Münzen eines Paares.",
            "Conii di dritto in alto, conii di rovescio in basso; un tratto più forte con una cifra vale altrettante monete di una coppia."),
    ORDERED_NOTE("Where states of a die tell the order, the earlier stands to the left.",
            "Là où les états d’un coin indiquent l’ordre, le plus ancien est à gauche.",
            "Wo Stempelzustände die Reihenfolge zeigen, steht das Frühere links.",
            "Dove gli stati di un conio indicano l’ordine, il più antico è a sinistra."),
    AGAIN_NOTE("A die in brackets stands there a second time.", "Un coin entre parenthèses y figure pour la seconde fois.",
            "Ein Stempel in Klammern steht dort zum zweiten Mal.", "Un conio fra parentesi vi compare per la seconda volta.");

    private final InEveryLanguage words;

    DieWord(String english, String french, String german, String italian) {
        this.words = new InEveryLanguage(english, french, german, italian);
    }

    public String in(Language language) {
        return words.in(language);
    }
}
