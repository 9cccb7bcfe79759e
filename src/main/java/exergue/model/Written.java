package exergue.model;

import exergue.finding.Place;

/** A value and where it was written. */
public record Written<T>(T value, Place place) {

    @Override
    public String toString() {
        return String.valueOf(value);
    }
}
