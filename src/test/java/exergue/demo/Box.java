package exergue.demo;

import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;

/** The part of a field that a shape needs. */
record Box(int left, int top, int width, int height) {

    static Box of(Shape shape, int margin, Field field) {
        Rectangle around = shape.getBounds();
        around.grow(margin, margin);
        Rectangle part = around.intersection(new Rectangle(0, 0, field.width, field.height));
        return new Box(part.x, part.y, Math.max(0, part.width), Math.max(0, part.height));
    }

    boolean empty() {
        return width == 0 || height == 0;
    }

    Shape moved(Shape shape) {
        return AffineTransform.getTranslateInstance(-left, -top).createTransformedShape(shape);
    }

    /** Where the part is higher than the field, the field is raised to it. */
    void highest(Field field, Field part) {
        for (int row = 0; row < height; row++) {
            for (int column = 0; column < width; column++) {
                int spot = (top + row) * field.width + left + column;
                field.at[spot] = Math.max(field.at[spot], part.at[row * width + column]);
            }
        }
    }

    /** The part is added to the field so many times. */
    void added(Field field, Field part, double times) {
        for (int row = 0; row < height; row++) {
            for (int column = 0; column < width; column++) {
                field.at[(top + row) * field.width + left + column] += (float) times * part.at[row * width + column];
            }
        }
    }
}
