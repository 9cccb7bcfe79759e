package exergue.model;

/** @param id as entries name it; @param sign as the book prints it; @param name in full */
public record Metal(String id, String sign, String name) { }
