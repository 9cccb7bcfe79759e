package exergue.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Many at work never take more than there is, but that one alone may; and all of them finish. */
class WorkroomTest {

    /** @param most what may be taken for pictures, four fifths of the whole; one that is larger has it alone */
    @ParameterizedTest
    @CsvSource({"1000, 100, 800", "1000, 300, 800", "1000, 900, 900", "0, 50, 50"})
    void noMoreIsTakenThanThereIs(long whole, long each, long most) throws Exception {
        Workroom room = new Workroom(whole);
        AtomicLong taken = new AtomicLong();
        AtomicLong peak = new AtomicLong();
        List<Callable<Long>> work = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            work.add(() -> {
                try (Workroom.Share file = room.forFile(each / 10); Workroom.Share picture = room.forPicture(each)) {
                    peak.accumulateAndGet(taken.addAndGet(each), Math::max);
                    Thread.yield();
                    taken.addAndGet(-each);
                    return each;
                }
            });
        }
        ExecutorService eight = Executors.newFixedThreadPool(8);
        long done = 0;
        for (Future<Long> one : eight.invokeAll(work)) {
            done += one.get();
        }
        eight.shutdown();
        assertEquals(60 * each, done);
        assertTrue(peak.get() <= most, peak + " of " + most);
    }

    @Test
    void aPictureTakesItsPixelsAndWhatIsReckonedFromThem() throws Exception {
        byte[] grey;
        try (java.io.InputStream in = WorkroomTest.class.getResourceAsStream("/photo/grey.jpg")) {
            grey = in.readAllBytes();
        }
        long pixels = 48 * 32;
        assertEquals(pixels + Scene.memory(48, 32), PictureReader.memory(grey, Limits.USUAL));
        assertEquals(0, PictureReader.memory(new byte[3], Limits.USUAL));
    }
}
