/**
 * What pages for a browser need besides templates: {@link exergue.typeset.web.Addresses} turns the book's anchors into
 * relative addresses, {@link exergue.typeset.web.HtmlText} writes a page as plain HTML.
 */
package exergue.typeset.web;
