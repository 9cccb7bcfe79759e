package exergue;

public final class Exergue {
    public static final String VERSION = "0.1.0";
    private Exergue() { }
}
