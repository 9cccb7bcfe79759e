package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.files.MemoryTree;
import exergue.photo.PictureSize;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 300 pixels an inch, as printers ask; an inch is 25.4 mm and 96 pixels of CSS (CSS Values and Units 3, section 5.2). */
class ChapterPictureTest {

    @ParameterizedTest
    @CsvSource({"300, 300, 96", "425, 413, 136", "1, 1, 1", "1653, 1000, 528", "600, 2125, 192"})
    void noPictureIsPrintedCoarserThanPrintersAsk(int across, int down, int wide) {
        assertEquals(Optional.of(wide), ChapterPicture.width(new PictureSize(across, down)));
    }

    @ParameterizedTest
    @CsvSource({"1660, 100", "600, 2140", "6000, 4000"})
    void whatHasPixelsForMoreIsAsLargeAsTheTextAllows(int across, int down) {
        assertEquals(Optional.empty(), ChapterPicture.width(new PictureSize(across, down)));
    }

    @Test
    void whatIsNoPictureHasNoWidth() {
        assertEquals(Optional.empty(), ChapterPicture.width(MemoryTree.ofText(Map.of("a.jpg", "no picture")), "a.jpg"));
    }
}
