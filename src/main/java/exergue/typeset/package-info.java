/**
 * Typesetting: the book as data becomes pages.
 *
 * <p>{@link exergue.typeset.Typesetter} is the door; it takes a {@code Book} and a
 * {@link exergue.typeset.Setting} and sets a tagged PDF/A-3u that also keeps PDF/UA-1. The way through the room:
 *
 * <ol>
 * <li>{@code BookValues}, {@code EntryValues}, {@code Alignment}, {@code Pictures}: the book as plain maps, lists and
 * words. All arithmetic of the page (which figures stand under each other) is done here; {@code Markup} and
 * {@code ProseMarkup} write prose as XHTML and escape it.
 * <li>{@code Templates}, {@code TemplateFiles}, {@code Xhtml}: FreeMarker, closed, fills the templates: file by file the
 * catalogue's own where it has them, otherwise those of the chosen set, otherwise those that all sets share. A fault is a finding with file,
 * line and column.
 * <li>{@code Press}: the page engine with our faces ({@code Faces}), our line breaks ({@code LineBreaks}) and one door
 * to files ({@code TreeResources}). What the engine only logs becomes findings ({@code Remarks}, {@code Quiet}).
 * <li>{@code SetPages}, {@code TooWide}: read from the boxes, after layout and before printing, on which page
 * everything stands and what is wider than its column.
 * <li>{@code Heads}, {@code Overprint}: running heads and folios, set when the pages are known and printed over them.
 * <li>{@code Passport}: title, standards, page labels, identifier; no dates, so that the same source gives the same
 * bytes.
 * </ol>
 *
 * <p>What is set is a {@link exergue.typeset.SetBook}: it can be written once its data are made ({@code Attachments}), and
 * then once more for the printer ({@code PressSheet}, {@code PureBlack}, {@code PressCheck}). The same values fill other
 * templates for a browser: {@link exergue.typeset.WebBook}, {@code WebPages}, {@code WebLinks}.
 *
 * <p>{@link exergue.typeset.Coverage} looks every letter up in the faces before anything is set. FreeMarker, the page
 * engine and PDFBox are used here and nowhere else.
 *
 * <p>The front matter is laid out once alone, so that the body can open on a right page. The rest is laid out once.
 */
package exergue.typeset;
