package exergue.model;

import java.util.Optional;

/** Of a picture that a chapter shows. @param picture path inside the tree; credit and permission are as those of a coin's photograph */
public record PictureRights(Written<String> picture, Optional<Written<String>> credit, Optional<Written<String>> permission) { }
