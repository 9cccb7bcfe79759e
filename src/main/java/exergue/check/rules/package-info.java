/** The rules: one fault, one file, holding its code, its message, its remedy and its page in the docs. */
package exergue.check.rules;
