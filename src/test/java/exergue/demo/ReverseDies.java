package exergue.demo;

import exergue.demo.Die.Ground;
import java.awt.Font;

/** The reverse dies of the types, with what single coins have of their own. */
final class ReverseDies {

    private static final String KING_ONE = "ΤΗΛΑΝΟΡΟΣ";
    private static final String KING_TWO = "ΟΡΥΑΝΔΡΟΥ";
    private static final String TITLE = "ΒΑΣΙΛΕΩΣ";

    private final Font face;

    ReverseDies(Font face) {
        this.face = face;
    }

    Die of(String type, String name, String coin) {
        Ground ground = switch (type) {
            case "ark-t02", "ark-t03", "ark-t04", "pho-t01" -> Ground.INCUSE_SQUARE;
            default -> Ground.EVEN;
        };
        Die die = new Die(name, face, ground);
        return switch (type.substring(0, 3)) {
            case "ark" -> type.compareTo("ark-t11") < 0 ? cityAndFirstKing(die, type) : laterArkeneia(die, type, coin);
            case "pho" -> phormantis(die, type, coin);
            default -> ormassos(die, type, coin);
        };
    }

    private static Die royal(Die die, String title, String name) {
        return die.around(title, 88, 0.85, 0.125, title.length() > 9 ? 12 : 14).around(name, 272, 0.85, 0.125, 13);
    }

    private Die cityAndFirstKing(Die die, String type) {
        return switch (type) {
            case "ark-t01" -> die.square(0.02, -0.03, 0.30, 8).square(-0.64, 0.02, 0.22, -4).square(0.66, 0.05, 0.21, 12);
            case "ark-t02" -> die.design(0.0, 0.0, 0.60, 0, g -> Creatures.heron(g.flipped(), true)).frame(-0.64, -0.64, 0.64, -0.64, 0.64, 0.64, -0.64, 0.64);
            case "ark-t03" -> die.design(-0.02, 0.02, 0.56, 0, g -> Creatures.heronBust(g.flipped())).line("Α", -0.50, -0.28, 0.20, 0.2, 0)
                    .line("Ρ", 0.50, 0.34, 0.20, 0.2, 0);
            case "ark-t04" -> die.design(0, 0.04, 0.60, 0, g -> Plants.vineLeaf(g, 1.2));
            case "ark-t05" -> die.design(0.06, 0.06, 0.74, 0, g -> Creatures.heron(g, false)).around("ΑΡΚΗΝΕΩΝ", 0, 0.80, 0.12, 17).ring(0.95, 0.075);
            case "ark-t06" -> die.design(0.02, 0.14, 0.66, 0, Creatures::heronBust).around("ΑΡΚΗ", 0, 0.76, 0.15, 19).ring(0.95, 0.085);
            case "ark-t07" -> royal(die, TITLE, KING_ONE).design(0.04, -0.04, 0.62, 0, g -> Creatures.heron(g, false)).design(-0.46, 0.12, 0.15, 0, Things::lamp)
                    .design(0.0, 0.76, 0.17, 90, Plants::ear).bar(0.56, 0.48);
            case "ark-t08" -> die.design(0.06, -0.02, 0.74, 0, g -> Creatures.heron(g, false)).design(-0.46, 0.22, 0.17, 0, g -> Plants.vineLeaf(g, 1))
                    .around(KING_ONE, 84, 0.84, 0.13, 14).design(0.04, 0.74, 0.20, 90, g -> Plants.reed(g, 0.3));
            case "ark-t09" -> royal(die, TITLE, KING_ONE).design(0.04, -0.04, 0.64, 0, g -> Creatures.heron(g, false))
                    .design(-0.46, 0.16, 0.115, 0, Things::monogramAlphaRho).design(0.0, 0.76, 0.17, 90, Plants::ear).bar(0.56, 0.48);
            case "ark-t10" -> royal(die, TITLE, KING_ONE).design(0.06, 0.02, 0.66, 0, ReverseDies::fisher).design(-0.44, 0.30, 0.13, 0, Things::monogramAlphaRho);
            default -> throw new IllegalArgumentException(type);
        };
    }

    private static void fisher(Graver g) {
        Creatures.heron(g, false);
        g.over(fish -> Things.fish(fish.at(-0.80, -0.62, 0.17, 70)));
    }

    private Die laterArkeneia(Die die, String type, String coin) {
        return switch (type) {
            case "ark-t11" -> royal(die, TITLE, KING_TWO).design(0, 0, 0.78, 0, Figures::advancingGoddess).design(0.44, -0.20, 0.12, 0, Things::star);
            case "ark-t12" -> royal(die, TITLE, KING_TWO).design(0, 0, 0.80, 0, Figures::standingGoddess).design(-0.46, 0.28, 0.13, 0, Things::star);
            case "ark-t13" -> royal(die, TITLE, KING_TWO).design(0, 0, 0.80, 0, Figures::standingGoddess).design(-0.48, 0.32, 0.16, 0, Things::amphora)
                    .design(-0.28, 0.06, 0.085, 0, Things::monogramEtaUpsilon);
            case "ark-t14" -> royal(die, TITLE, KING_TWO).design(0, 0.10, 0.56, 0, Things::bowCase)
                    .design(coin.equals("ark-058") ? 0.46 : 0.02, coin.equals("ark-058") ? 0.1 : -0.66, 0.17, 0, Things::amphora);
            case "ark-t15" -> die.design(0.02, 0.10, 0.60, 0, g -> Creatures.heron(g, false)).design(-0.60, 0.14, 0.56, 0, g -> Plants.reed(g, 0.05))
                    .design(0.60, 0.14, 0.56, 0, g -> Plants.reed(g.flipped(), 0.05)).line(KING_TWO, 0, -0.66, 0.12, 0.155, 0)
                    .frame(-0.84, -0.82, 0.84, -0.82, 0.84, 0.82, -0.84, 0.82);
            case "ark-t16" -> die.design(0.14, 0.0, 0.84, 0, g -> Plants.reed(g, 0.4)).frame(-0.76, -1.02, 0.76, -1.02, 0.76, 1.02, -0.76, 1.02);
            case "ark-t17" -> royal(die, "ΒΑΣΙΛΙΣΣΗΣ", "ΑΝΘΥΡΑΣ").design(-0.24, -0.06, 0.56, -13, Plants::ear).design(0.24, -0.06, 0.56, 13, Plants::ear)
                    .design(0.0, -0.24, 0.20, 0, g -> Creatures.heron(g, false)).design(0, 0.68, 0.11, 0, Things::monogramEtaUpsilon);
            case "ark-t18" -> die.design(0, 0.08, 0.66, 90, Plants::ear).around("ΑΝΘΥ", 0, 0.72, 0.18, 22);
            case "ark-t19" -> royal(die, TITLE, KING_ONE).design(0, -0.08, 0.66, 0, Creatures::heronFlying).design(0, 0.60, 0.17, 0, Things::lamp);
            case "ark-t20" -> telanorTwo(die, coin);
            case "ark-t21" -> royal(die, TITLE, coin.equals("ark-090") ? "" : KING_ONE).design(0, 0.06, 0.60, 0, Things::urn).design(0.06, -0.52, 0.17, 0, Things::lamp);
            case "ark-t22" -> royal(die, TITLE, KING_ONE).design(0.0, 0, 0.68, 0, g -> Creatures.heron(g, false)).design(0.50, -0.18, 0.15, 0, Things::lamp);
            case "ark-t23" -> die.design(0.0, 0.34, 0.40, 0, Things::altar).design(0, -0.28, 0.38, 0, g -> Creatures.heron(g.flipped(), false))
                    .around(coin.equals("ark-102") ? "ΑΡΧΙΘΑΛΗϹ" : "ΕΥΡΥΜΝΗϹ", 84, 0.66, 0.095, 13)
                    .around(coin.equals("ark-102") ? "ΕΥΡΥΜΝΟΥ" : coin.equals("ark-100") ? "ΛΥΚ" : "ΛΥΚΑΝΔΡΙΔΟΥ", 276, 0.66, 0.095, 13).design(0, 0, 1.0, 0, Plants::wreath);
            case "ark-t24" -> die.design(0, 0.16, 0.60, 0, Things::altar).design(0, -0.50, 0.14, 0, Things::star)
                    .around("ΔΟΡΥ", 82, 0.80, 0.14, 15).around("ΜΝΙΩΝ", 278, 0.80, 0.14, 15);
            default -> throw new IllegalArgumentException(type);
        };
    }

    /** On two coins a bar stands in place of the name, and the mark below the line changes. */
    private Die telanorTwo(Die die, String coin) {
        boolean barred = coin.equals("ark-085") || coin.equals("ark-086");
        boolean lamp = coin.equals("ark-079") || coin.equals("ark-080") || coin.equals("ark-081");
        royal(die, TITLE, barred ? "" : KING_ONE).design(0.0, -0.02, 0.74, 0, Figures::reclining)
                .design(0, 0.76, 0.13, 0, lamp ? Things::lamp : Things::monogramAlphaEta);
        return barred ? die.scar(272, 0.85, 56) : die;
    }

    private Die phormantis(Die die, String type, String coin) {
        return switch (type) {
            case "pho-t01" -> die.design(0.02, 0.12, 0.60, 0, g -> Things.prow(g.flipped())).line("ΦΟΡΜΑ", 0, -0.52, 0.15, 0.22, 0);
            case "pho-t02" -> die.design(0, -0.02, 0.80, 0, g -> Things.trident(g, false))
                    .line(coin.equals("pho-008") ? "Ο" : "Φ", -0.62, 0.36, 0.26, 0.2, 0).line(coin.equals("pho-008") ? "Φ" : "Ο", 0.62, 0.36, 0.26, 0.2, 0);
            case "pho-t03" -> die.around(TITLE, 300, 0.85, 0.12, 13).around(KING_ONE, 62, 0.85, 0.12, 12.5).design(0, 0.08, 0.62, 0, Things::prow)
                    .design(-0.10, -0.50, 0.16, 0, g -> Plants.vineLeaf(g, 1)).line("ΦΟ", 0, 0.78, 0.10, 0.15, 0);
            case "pho-t04" -> die.design(0, 0, 0.90, 0, ReverseDies::entwined).column("ΟΡΥΑ", -0.74, 0, 0.17, 0.26).column("ΦΟ", 0.74, 0, 0.17, 0.28);
            case "pho-t05" -> die.around(TITLE, 0, 0.84, 0.13, 15).below(KING_TWO, 180, 0.84, 0.13, 13).design(0, 0.04, 0.62, 0, Things::prow)
                    .design(-0.26, 0.12, 0.12, 0, Things::star);
            case "pho-t06" -> die.around("ΒΑ", 300, 0.80, 0.16, 17).around("ΤΗ", 60, 0.80, 0.16, 17).design(0, 0.12, 0.70, 0, Things::prow).design(-0.06, -0.56, 0.18, 0, Things::lamp);
            case "pho-t07" -> die.around("ΦΙΛΟΘΑΛΗϹ", 84, 0.86, 0.105, 12.5).around(coin.compareTo("pho-026") >= 0 ? "ΠΡΥ" : "ΠΡΥΤΑΝΙϹ", 276, 0.86, 0.105, 12.5)
                    .design(0.0, -0.02, 0.72, 0, Figures::seated).design(0, 0.78, 0.20, 0, Creatures::dolphin);
            case "pho-t08" -> die.around("ΦΙΛΟΘΑΛΗϹ", 0, 0.80, 0.14, 17).design(0, 0.06, 0.64, 0, Creatures::dolphin).design(0, 0.62, 0.62, 0, ReverseDies::waves);
            case "pho-t09" -> die.design(0, 0.0, 0.78, 0, g -> Things.trident(g, false)).line("Φ", -0.62, 0.42, 0.24, 0.2, 0).line("Ο", 0.58, 0.42, 0.24, 0.2, 0)
                    .line("Ρ", 0.60, 0.0, 0.24, 0.2, 0);
            case "pho-t10" -> die.around("Q · ORVANNI · IIVIR", 0, 0.78, 0.115, 12).design(0, 0.08, 0.66, 0, Figures::ploughman).dots(0.94, 56);
            case "pho-t11" -> die.around("Q · ORV", 0, 0.78, 0.16, 17).design(0, 0.10, 0.64, 0, Things::plough);
            case "pho-t12" -> die.around("M · TESSENNI · AED", 0, 0.82, 0.13, 13).design(0, 0.12, 0.58, 0, Things::shell);
            default -> throw new IllegalArgumentException(type);
        };
    }

    private static void entwined(Graver g) {
        Things.trident(g, true);
        g.over(left -> Creatures.dolphin(left.at(-0.20, 0.30, 0.34, -62)));
        g.over(right -> Creatures.dolphin(right.at(0.20, 0.52, 0.34, 62).flipped()));
    }

    private static void waves(Graver g) {
        for (int row = 0; row < 2; row++) {
            for (int i = 0; i < 6; i++) {
                double x = -0.90 + i * 0.31 + row * 0.12;
                double y = row * 0.20;
                g.tube(new double[] {0.05, 0.08, 0.03}, 0.06, x, y, x + 0.12, y - 0.13, x + 0.24, y - 0.08, x + 0.20, y);
            }
        }
    }

    private Die ormassos(Die die, String type, String coin) {
        return switch (type) {
            case "orm-t01" -> die.design(0, 0.04, 0.74, 0, g -> Things.tower(g, 3, true)).line(coin.equals("orm-004") ? "Ρ" : "Ο", -0.70, 0.1, 0.24, 0.2, 0)
                    .line(coin.equals("orm-004") ? "Ο" : "Ρ", 0.70, 0.1, 0.24, 0.2, 0);
            case "orm-t02" -> royal(die, coin.equals("orm-007") || coin.equals("orm-008") ? "ΒΑΣΛΙΕΩΣ" : TITLE, KING_ONE)
                    .design(-0.08, -0.04, 0.60, 0, g -> Things.tower(g, 4, true)).design(0.48, 0.16, 0.24, 0, g -> Creatures.heron(g, false))
                    .line("ΟΡΜ", 0, 0.74, 0.12, 0.17, 0);
            case "orm-t03" -> die.around(KING_ONE, 80, 0.84, 0.135, 14).design(-0.04, 0.10, 0.66, 0, g -> Things.tower(g, 4, true)).design(-0.02, -0.74, 0.15, 180, Things::crescent);
            case "orm-t06" -> die.line("ΦΡ", 0, -0.36, 0.40, 0.62, 0).line("ΟΥ", 0, 0.36, 0.40, 0.62, 0).frame(-0.78, -1.06, 0.78, -1.06, 0.78, 1.06, -0.78, 1.06);
            case "orm-t07" -> eagle(die, coin);
            default -> throw new IllegalArgumentException(type);
        };
    }

    /** Often blundered. */
    private static Die eagle(Die die, String coin) {
        String right = coin.equals("orm-024") ? "ϹΩΝ" : coin.equals("orm-025") || coin.equals("orm-026") ? "ΕΩΝ" : "ϹΕΩΝ";
        return die.design(0.02, -0.06, 0.74, 0, Creatures::eagle).design(0, 0.56, 0.46, 0, Things::thunderbolt)
                .column("ΟΡΜΑϹ", -0.72, -0.05, 0.17, 0.25).column(right, 0.72, -0.05, 0.17, 0.25);
    }
}
