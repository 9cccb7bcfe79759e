package exergue.photo;

/** Of a picture, in pixels. */
public record PictureSize(int width, int height) { }
