package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MisunderstoodTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "chek                   | There is no command “chek”. Did you mean “check”?",
        "xyzzy                  | There is no command “xyzzy”.",
        "check --frmat json     | “--frmat” is not an option of “check”. Did you mean “--format”?",
        "check a b              | “b” is one word too many.",
        "check --format sarf    | “sarf” cannot stand for --format; it is one of full, concise, json and sarif. Did you mean “sarif”?",
        "typeset --to           | After “--to” comes DIR, which is missing.",
        "start                  | DIR is missing."})
    void whatIsWrongIsSaidInWordsOfOurs(String typed, String message) {
        Ran ran = Ran.command(typed.strip().split(" "));
        assertEquals(2, ran.code());
        assertTrue(ran.err().startsWith("exergue: " + message + "\n“exergue"), ran.err());
    }
}
