/**
 * What is shown of groups of coins: tables as printed texts, charts as data, single figures for running text. A {@link
 * exergue.study.figure.Subject} makes them; {@link exergue.study.figure.Subjects} lists all there are. Book, command line and
 * files print the same texts, so that they never disagree.
 */
package exergue.study.figure;
