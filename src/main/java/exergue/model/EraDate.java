package exergue.model;

/** A year as it stands on the coin. @param era id of one that the house style knows */
public record EraDate(Written<String> era, Written<Integer> year) { }
