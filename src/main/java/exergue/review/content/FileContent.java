package exergue.review.content;

/** What a file holds that is no text of the catalogue. @param digest the same for the same content, and for no other */
public record FileContent(String digest, long bytes) {

    String shown() {
        return bytes + (bytes == 1 ? " byte" : " bytes");
    }
}
