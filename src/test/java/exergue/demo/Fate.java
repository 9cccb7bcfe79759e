package exergue.demo;

import exergue.model.Coin;
import exergue.model.Damage;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

/** What the entries say has happened to single coins, and what the pictures show of it. */
final class Fate {

    private final String id;
    private final Set<Damage> damage;

    Fate(Coin coin) {
        this.id = coin.id().value();
        this.damage = coin.damage().stream().map(exergue.model.Written::value).collect(Collectors.toSet());
    }

    boolean has(String word) {
        return damage.stream().anyMatch(one -> one.name().toLowerCase(java.util.Locale.ROOT).equals(word));
    }

    /** What changes the outline, on a flan about 2 mm across. */
    Flan edge(Flan flan, FlanMaker maker, Random chance) {
        Flan done = switch (id) {
            case "ark-008" -> maker.clipped(maker.clipped(flan, 62, 0.84), 242, 0.82);
            case "ark-019" -> maker.broken(flan, 118, 0.34);
            case "ark-088" -> maker.broken(maker.broken(flan, 75, 0.62), 285, 0.70);
            case "ark-101" -> maker.clipped(flan, 205, 0.70);
            case "orm-008" -> maker.broken(flan, 96, 0.02);
            case "orm-027" -> maker.clipped(flan, 128, 0.72);
            default -> flan;
        };
        if (has("chipped")) {
            done = maker.nicked(maker.nicked(done, 20 + 300 * chance.nextDouble(), 0.10), 360 * chance.nextDouble(), 0.06);
        }
        return done;
    }

    /** A hole, once the flan has its millimetres. */
    Flan holed(Flan flan, FlanMaker maker) {
        if (!has("pierced") || has("plugged")) {
            return flan;
        }
        double radius = flan.vertical() / 2;
        return switch (id) {
            case "ark-006" -> maker.pierced(flan, -4, radius * 0.78, 0.85);
            case "ark-095" -> maker.pierced(flan, 8, radius * 0.74, 1.15);
            default -> maker.pierced(flan, 340, radius * 0.80, 0.80);
        };
    }

    double pits(double usual) {
        return has("corroded") ? 0.85 : has("uncleaned") ? 0.8 : usual;
    }

    double wear(double usual) {
        return switch (id) {
            case "ark-015" -> 0.97;
            case "ark-036", "ark-052", "ark-022" -> 0.03;
            case "orm-005", "pho-015" -> 0.95;
            default -> usual;
        };
    }

    /** Cuts, flaws, plugs on the obverse, in mm. */
    DrawnCoin.Later obverse() {
        return (surface, pixelsPerMm) -> {
            switch (id) {
                case "ark-002" -> surface.groove(0.75, 0.75 * pixelsPerMm, -3.4, -4.6, 0.3, -0.4, 3.6, 4.2);
                case "ark-034" -> plug(surface, pixelsPerMm, 1.5, -9.4, 1.4);
                case "ark-050" -> flaw(surface, pixelsPerMm, -6.6, 0.2, -10.2, 3.4);
                case "ark-051" -> {
                    flaw(surface, pixelsPerMm, -6.6, 0.2, -10.2, 3.4);
                    flaw(surface, pixelsPerMm, -6.4, 0.6, -4.8, 6.6);
                }
                case "pho-005" -> plug(surface, pixelsPerMm, -1.2, -7.2, 1.3);
                default -> { }
            }
        };
    }

    DrawnCoin.Later reverse() {
        return (surface, pixelsPerMm) -> {
            switch (id) {
                case "ark-082" -> strokes(surface, pixelsPerMm, 3, 0.55);
                case "ark-083" -> strokes(surface, pixelsPerMm, 4, 0.50);
                case "ark-090" -> strokes(surface, pixelsPerMm * 0.65, 2, 0.40);
                case "pho-030" -> surface.swell(0.4, -5.6, 1.1, 0.6, 10, 0.22 * pixelsPerMm);
                default -> { }
            }
        };
    }

    /** A die that has split throws up a ragged ridge. */
    private static void flaw(Graver surface, double pixelsPerMm, double x, double y, double toX, double toY) {
        double middleX = (x + toX) / 2;
        double middleY = (y + toY) / 2;
        surface.rib(new double[] {0.35, 0.75, 0.50}, 0.30 * pixelsPerMm, x, y, middleX - 0.5, middleY - 0.3, middleX + 0.1, middleY + 0.6, toX, toY);
        surface.swell(middleX, middleY + 0.3, 0.5, 0.35, 40, 0.14 * pixelsPerMm);
    }

    private static void plug(Graver surface, double pixelsPerMm, double x, double y, double radius) {
        surface.swell(x, y, radius * 0.7, radius * 0.6, 0, 0.10 * pixelsPerMm);
        double[] ring = new double[26];
        for (int i = 0; i < 13; i++) {
            ring[2 * i] = x + radius * Math.cos(i * Math.PI / 6);
            ring[2 * i + 1] = y + radius * (0.92 + 0.05 * (i % 2)) * Math.sin(i * Math.PI / 6);
        }
        surface.groove(0.20, 0.12 * pixelsPerMm, ring);
    }

    /** A chisel across the name, which stands at the left. */
    private static void strokes(Graver surface, double pixelsPerMm, int count, double deep) {
        for (int i = 0; i < count; i++) {
            double off = (i - (count - 1) / 2.0) * 3.1;
            surface.groove(0.85, deep * pixelsPerMm, -12.0 + Math.abs(off) * 0.35, -1.2 + off, -10.6 + Math.abs(off) * 0.3, 0.1 + off, -9.0 + Math.abs(off) * 0.25, 1.4 + off);
        }
    }
}
