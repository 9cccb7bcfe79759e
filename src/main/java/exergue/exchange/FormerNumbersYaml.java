package exergue.exchange;

import java.util.Optional;

/** The numbers of an edition as {@code former-numbers.yaml} of the next: one coin a line, so that changes can be seen. */
public final class FormerNumbersYaml {

    private FormerNumbersYaml() { }

    /** @param edition what the edition is called */
    public static String of(Optional<String> edition, BookNumbers numbers) {
        StringBuilder yaml = new StringBuilder("# Written by the command numbers. The concordance of old and new numbers is made from it.\n");
        edition.ifPresent(words -> yaml.append("edition: '").append(words.replace("'", "''")).append("'\n"));
        yaml.append("numbers:\n");
        numbers.byCoin().forEach((coin, number) ->
                yaml.append("  - {coin: ").append(coin).append(", number: ").append(number).append("}\n"));
        return yaml.toString();
    }
}
