/**
 * Comparing two states of a catalogue by what they say. In the order of the road: {@code git} reads a revision as a tree;
 * {@code content} takes what a record of the model says apart into fields; {@code differ} finds what is otherwise;
 * {@code change} holds that as data; {@code consequence} works out what follows for the book; {@code words} tells both;
 * {@code sheet} lays the changed entries out for a printed proof.
 */
package exergue.review;
