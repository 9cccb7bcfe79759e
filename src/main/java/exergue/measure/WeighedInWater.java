package exergue.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A density from two weighings: {@code 14.103 g in air, 13.081 g in water, 20 °C}. */
final class WeighedInWater {

    private static final Pattern TEXT = Pattern.compile("(?i) *(?<air>.+?) +in +air *[,;]? *(?:and +)?(?<water>.+?) +in +water"
            + "(?: *[,;]? *(?:(?:at|of) +)?(?<celsius>.*?))? *");
    private static final Pattern CELSIUS =
            Pattern.compile("(?i)(?<degrees>-?[0-9]{1,3}(?:[.,][0-9]{1,2})?) *(?:°|deg(?:rees)?\\.?)? *(?:c|celsius|centigrade)\\.?");
    private static final Pattern SPEAKS_OF_IT = Pattern.compile("(?i)\\bin +(?:air|water)\\b");

    private WeighedInWater() { }

    static boolean fits(Task task) {
        return SPEAKS_OF_IT.matcher(task.marks().plain()).find();
    }

    static Step<Reading> read(Task task) {
        return weighings(task).then(weighed -> Density.of(weighed)
                .map(density -> Step.<Reading>done(new Reading.Read(Kind.DENSITY, task.marks().written(), Reading.Form.SINGLE,
                        List.of(weighed.inAir(), weighed.inWater()), List.of(density), Reading.Qualifier.NONE)))
                .orElseGet(() -> task.stop(ReadingFault.NOT_LIGHTER_IN_WATER, "In " + task.marks().quoted()
                        + " the coin does not weigh measurably less in water than in air, so there is no density.",
                        "Look both weighings up: perhaps they stand the wrong way round, or the balance is too coarse.")));
    }

    /** The weighings that a text gives, in the order air, water, temperature. */
    static Step<Density.Weighings> weighings(Task task) {
        Matcher text = TEXT.matcher(task.marks().plain());
        if (!text.matches()) {
            return task.stop(ReadingFault.WEIGHINGS_UNCLEAR, "The weighings in " + task.marks().quoted() + " are not complete.",
                    "Write the weight in air, the weight in water and the temperature of the water, as in "
                            + "14.103 g in air, 13.081 g in water, 20 °C.");
        }
        return weight(text, "air", task).then(air -> weight(text, "water", task).then(water ->
                celsius(text, task).then(celsius -> Step.done(new Density.Weighings(air, water, celsius)))));
    }

    /** One figure only, in grams or any other unit of weight; what is wrong with it is told where it stands. */
    private static Step<Quantity> weight(Matcher text, String group, Task task) {
        int from = text.start(group);
        String written = task.marks().written(from, text.end(group));
        Parsed parsed = ReadingParser.parse(Kind.WEIGHT, written, task.convention());
        if (parsed instanceof Parsed.Refused refused) {
            Remark inside = refused.remark();
            return new Step.Stopped<>(new Remark(inside.fault(), task.marks().place(from) + inside.offset(), inside.length(),
                    inside.what(), inside.remedy()));
        }
        boolean plain = ((Parsed.Accepted) parsed).reading() instanceof Reading.Read read
                && read.asRecorded().size() == 1 && read.qualifier() == Reading.Qualifier.NONE;
        if (!plain) {
            return task.stop(ReadingFault.WEIGHINGS_UNCLEAR, from, text.end(group), "The weight "
                    + task.marks().quoted(from, text.end(group)) + " is not one exact figure.",
                    "A density needs the figure that the balance showed; say density: \"missing: why\" if it is not known.");
        }
        Reading.Read read = (Reading.Read) ((Parsed.Accepted) parsed).reading();
        Quantity recorded = read.asRecorded().get(0);
        return Step.done(recorded.unit().isNormal() ? read.first() : recorded);
    }

    private static Step<BigDecimal> celsius(Matcher text, Task task) {
        String written = Optional.ofNullable(text.group("celsius")).orElse("");
        if (written.isEmpty()) {
            return task.stop(ReadingFault.WATER_TEMPERATURE, "The temperature of the water is not said in " + task.marks().quoted() + ".",
                    "Add it, as in 20 °C. If it is not known, give the density that the source worked out: 13.8 g/cm³.");
        }
        Matcher celsius = CELSIUS.matcher(written);
        if (!celsius.matches()) {
            return task.stop(ReadingFault.WATER_TEMPERATURE, text.start("celsius"), text.end("celsius"), task.marks().quoted(
                    text.start("celsius"), text.end("celsius")) + " is not a temperature in degrees Celsius.", "Write it as in 20 °C.");
        }
        BigDecimal degrees = new BigDecimal(celsius.group("degrees").replace(',', '.'));
        return Density.ofWater(degrees).isPresent() ? Step.done(degrees) : task.stop(ReadingFault.WATER_TEMPERATURE,
                text.start("celsius"), text.end("celsius"), "The density of water is known from 0 °C to 40 °C, not at "
                        + task.marks().quoted(text.start("celsius"), text.end("celsius")) + ".", "Look the temperature up.");
    }
}
