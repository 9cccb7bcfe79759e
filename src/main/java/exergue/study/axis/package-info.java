/** What die-axes of groups tell: whether they were fixed, in one direction or in two opposite ones. */
package exergue.study.axis;
