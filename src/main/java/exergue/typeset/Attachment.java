package exergue.typeset;

/**
 * A data file that the book carries inside it.
 *
 * @param name        file name under which a reader takes it out: "catalogue.json"
 * @param type        media type: "application/json"
 * @param description one line for the reader's list of attachments
 * @param bytes       not copied; nobody changes them
 */
public record Attachment(String name, String type, String description, byte[] bytes) { }
