/**
 * Coins that are studied together: those of a group that the catalogue declares ({@link exergue.model.CoinGroup}), or all of
 * them divided by fields. Each coin comes with the figures that are printed of it and with whether they count.
 */
package exergue.study.group;
