package exergue.demo;

/**
 * What lies behind a coin: colour as shares of light, how far it falls off over the picture, and the shadow the coin
 * throws on it.
 *
 * @param fall   share of the light that is lost from the upper left to the lower right corner
 * @param shadow how dark, 0 to 1; {@code away} its distance in mm, {@code soft} the breadth of its edge in mm
 */
record Backdrop(double red, double green, double blue, double fall, double shadow, double away, double soft) {

    static final Backdrop WHITE = new Backdrop(0.96, 0.96, 0.955, 0, 0, 0, 0.4);
    static final Backdrop PAPER = new Backdrop(0.86, 0.86, 0.85, 0.05, 0.30, 0.40, 0.45);
    static final Backdrop GREY = new Backdrop(0.36, 0.36, 0.365, 0.08, 0.45, 0.45, 0.50);
    static final Backdrop BLACK = new Backdrop(0.006, 0.006, 0.007, 0, 0, 0, 0.4);
    static final Backdrop BLUE = new Backdrop(0.13, 0.24, 0.42, 0.08, 0.40, 0.45, 0.50);
    static final Backdrop FELT = new Backdrop(0.05, 0.16, 0.10, 0.08, 0.40, 0.40, 0.45);

    double channel(int number) {
        return number == 0 ? red : number == 1 ? green : blue;
    }
}
