package exergue.demo;

import exergue.demo.Die.Ground;
import java.awt.Font;

/** The dies of every type of the demonstration catalogue. What they show is described in the types' files. */
final class Dies {

    private final Font face;

    Dies(Font face) {
        this.face = face;
    }

    /**
     * @param type such as ark-t09
     * @param name of the die or of the coin: it gives the engraver's hand
     * @param coin for what only this coin's die has
     */
    Die obverse(String type, String name, String coin) {
        Die die = new Die(name, face, Ground.EVEN);
        double hand = Math.abs(name.hashCode() % 97) / 13.0;
        return switch (type.substring(0, 3)) {
            case "ark" -> arkeneia(die, type, hand, coin);
            case "pho" -> phormantis(die, type, hand);
            default -> ormassos(die, type, hand, coin);
        };
    }

    private Die arkeneia(Die die, String type, double hand, String coin) {
        boolean leftToRight = coin.equals("ark-007") || coin.equals("ark-008");
        return switch (type) {
            case "ark-t01" -> die;
            case "ark-t02" -> (leftToRight ? die.around("ΑΡΚΗ", -8, 0.80, 0.15, 15) : die.retrograde("ΑΡΚΗ", -8, 0.80, 0.15, 15))
                    .design(0.02, 0.08, 0.70, 0, Creatures::bull).dots(0.95, 44);
            case "ark-t03" -> die.design(0, 0, 0.80, 0, Creatures::bull).dots(0.95, 40);
            case "ark-t04" -> die.design(-0.04, 0, 0.88, 0, g -> Creatures.heronBust(g.flipped()));
            case "ark-t05" -> die.design(0, 0.0, 0.80, 0, g -> Plants.vineLeaf(g, 1.0)).ring(0.95, 0.075);
            case "ark-t06" -> die.design(0, 0.02, 0.82, 0, Plants::grapes).ring(0.95, 0.085);
            case "ark-t07", "ark-t09" -> die.design(0.04, 0, 0.90, 0, g -> Heads.god(g, Heads::vineWreath, hand)).dots(0.95, 76);
            case "ark-t08" -> die.design(0.04, 0, 0.96, 0, g -> Heads.god(g, Heads::laurel, hand));
            case "ark-t10", "ark-t22" -> die.design(0.04, 0, 0.96, 0, g -> Heads.god(g, Heads::vineWreath, hand));
            case "ark-t11", "ark-t14" -> die.design(0.05, 0, 0.97, 0, g -> Heads.king(g, false, hand));
            case "ark-t12", "ark-t13" -> die.design(0.05, 0, 0.92, 0, g -> Heads.king(g, false, hand)).dots(0.95, 80);
            case "ark-t15" -> die.design(0.06, 0.06, 0.66, 0, Creatures::elephant).line("ΒΑΣΙΛΕΩΣ", 0, -0.66, 0.125, 0.165, 0)
                    .frame(-0.84, -0.82, 0.84, -0.82, 0.84, 0.82, -0.84, 0.82);
            case "ark-t16" -> die.design(0, 0.02, 0.44, 0, Things::bell).column(coin.equals("ark-067") ? "ΟΡ" : "ΒΑ", -0.58, 0, 0.15, 0.26)
                    .column(coin.equals("ark-067") ? "ΒΑ" : "ΟΡ", 0.58, 0, 0.15, 0.26).frame(-0.76, -1.02, 0.76, -1.02, 0.76, 1.02, -0.76, 1.02);
            case "ark-t17" -> die.design(0.08, 0, 0.90, 0, Heads::queen).dots(0.95, 78);
            case "ark-t18" -> die.design(0, 0, 0.80, 0, Things::stephane).design(0, -0.74, 0.1, 0, Dies::pellet).design(0, 0.52, 0.1, 0, Dies::pellet);
            case "ark-t19" -> die.design(0.08, 0, 0.97, 0, Heads::goddess);
            case "ark-t20" -> die.design(0.05, 0, 0.92, 0, g -> Heads.king(g, true, hand)).dots(0.95, 80);
            case "ark-t21" -> die.design(0.05, 0, 0.97, 0, g -> Heads.king(g, true, hand));
            case "ark-t23" -> die.design(0.10, 0.04, 0.74, 0, Dies::huntress).around("ΚΟΙΝΟΝ", 62, 0.84, 0.11, 13).around("ΔΟΡΥΜΝΙΩΝ", -62, 0.84, 0.11, 11);
            case "ark-t24" -> die.design(0.0, 0, 0.84, 0, g -> Plants.vineLeaf(g, 1.0));
            default -> throw new IllegalArgumentException(type);
        };
    }

    private static void pellet(Graver g) {
        g.dot(0, 0, 0.9, 0.24);
    }

    private static void huntress(Graver g) {
        g.over(quiver -> Things.bowCase(quiver.at(-0.56, 0.66, 0.36, 24)));
        Heads.goddess(g);
    }

    private Die phormantis(Die die, String type, double hand) {
        return switch (type) {
            case "pho-t01" -> die.design(0, -0.04, 0.86, 0, Figures::striding).design(0, 0.84, 0.24, 0, Creatures::dolphin);
            case "pho-t02" -> die.design(0, 0.04, 0.78, 0, Creatures::dolphin).dots(0.95, 34);
            case "pho-t03" -> die.design(0.04, 0, 0.97, 0, g -> Heads.god(g, Heads::laurel, hand));
            case "pho-t04" -> die.design(0.05, 0, 0.97, 0, g -> Heads.king(g, false, hand));
            case "pho-t05" -> die.design(0.04, 0, 0.90, 0, g -> Heads.god(g, Heads::seaweed, hand)).dots(0.95, 60);
            case "pho-t06" -> die.design(0, 0, 0.86, 0, g -> Things.trident(g, true)).design(-0.58, 0.24, 0.34, -100, Creatures::dolphin)
                    .design(0.58, 0.24, 0.34, -80, g -> Creatures.dolphin(g.flipped()));
            case "pho-t07" -> die.design(0.02, 0.04, 0.74, 0, Dies::huntress).design(0.64, 0.10, 0.34, 0, g -> Things.trident(g, true))
                    .around("ΚΟΙΝΟΝ", 40, 0.86, 0.11, 12).around("ΔΟΡΥΜΝΙΩΝ", -62, 0.86, 0.11, 11);
            case "pho-t08" -> die.design(0.06, 0.04, 0.84, 0, Heads::goddess).around("ΔΟΡΥ", 58, 0.82, 0.15, 17);
            case "pho-t09" -> die.design(0, 0, 0.92, 0, Things::shell);
            case "pho-t10" -> die.design(0.02, 0.06, 0.70, 0, Dies::steered).around("COL · PHORMANT", 0, 0.76, 0.125, 12.5).dots(0.94, 56);
            case "pho-t11" -> die.design(0, 0.10, 0.66, 0, Dies::anchored).around("COL · PHOR", 0, 0.80, 0.14, 14);
            case "pho-t12" -> die.design(0.02, 0.05, 0.84, 0, g -> neptune(g, hand)).around("PHORMANT", 54, 0.86, 0.13, 13);
            default -> throw new IllegalArgumentException(type);
        };
    }

    private static void steered(Graver g) {
        g.over(oar -> oar.tube(new double[] {0.05, 0.06, 0.14}, 0.06, -0.70, -0.62, -0.86, 0.0, -0.96, 0.62));
        Things.prow(g);
    }

    private static void anchored(Graver g) {
        Things.anchor(g);
        g.over(fish -> Creatures.dolphin(fish.at(0, 0.06, 0.72, -8)));
    }

    private static void neptune(Graver g, double hand) {
        g.over(fork -> Things.trident(fork.at(-0.56, 0.30, 0.70, -24), true));
        Heads.god(g, Heads::seaweed, hand);
    }

    private Die ormassos(Die die, String type, double hand, String coin) {
        return switch (type) {
            case "orm-t01" -> die.design(0.05, 0, 0.95, 0, g -> Heads.crude(g, false));
            case "orm-t02" -> die.design(0.05, 0, 0.94, 0, g -> Heads.crude(g, true));
            case "orm-t03" -> die.design(0.05, 0, 0.96, 0, g -> Heads.crude(g, true));
            case "orm-t04" -> necessity(die, coin);
            case "orm-t05" -> die.design(0, 0.10, 0.60, 0, g -> Things.tower(g, 4, true)).around("ΟΡΜΑ", 0, 0.74, 0.16, 20).ring(0.94, 0.12);
            case "orm-t06" -> die.design(0, 0, 0.86, 0, Plants::ear).frame(-0.78, -1.06, 0.78, -1.06, 0.78, 1.06, -0.78, 1.06);
            case "orm-t07" -> die.design(0, 0, 0.88, 0, Dies::gate);
            default -> throw new IllegalArgumentException(type);
        };
    }

    private static void gate(Graver g) {
        Things.tower(g, 4, false);
        Things.door(g);
    }

    /** Two punches into a plain square: what lies in them stands up from sunk ground. */
    private Die necessity(Die die, String coin) {
        die.punch(0, -0.14, 0.56).design(0, -0.12, 0.34, 0, g -> Things.tower(g, 3, true)).aroundAt("ΟΡΜΑϹϹΕΩΝ", 0, -0.14, 0.46, 0.10, 25);
        return coin.equals("orm-015") ? die : die.punch(0, 0.66, 0.20).line("ΙΒ", 0, 0.66, 0.17, 0.15, 0);
    }

    Die reverse(String type, String name, String coin) {
        return new ReverseDies(face).of(type, name, coin);
    }
}
