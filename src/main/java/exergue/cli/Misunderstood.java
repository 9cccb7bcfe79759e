package exergue.cli;

import exergue.finding.NearMiss;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What was typed and cannot be a command, in words of ours: the library's speak of indexes and matching. */
final class Misunderstood {

    private final ParameterException problem;
    private final CommandLine line;

    private Misunderstood(ParameterException problem) {
        this.problem = problem;
        this.line = problem.getCommandLine();
    }

    /** One or two sentences, then where to look. */
    static String explain(ParameterException problem) {
        Misunderstood misunderstood = new Misunderstood(problem);
        return misunderstood.what() + "\n“" + misunderstood.line.getCommandSpec().qualifiedName()
                + " --help” says what can be typed here.";
    }

    private String what() {
        if (problem instanceof UnmatchedArgumentException unmatched && !unmatched.getUnmatched().isEmpty()) {
            return unknown(unmatched.getUnmatched().get(0));
        }
        if (problem instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
            return missing(missing.getMissing().get(0));
        }
        ArgSpec argument = problem.getArgSpec();
        if (argument != null && argument.type().isEnum() && problem.getValue() != null) {
            return wrongWord(argument, problem.getValue());
        }
        return problem.getMessage() + ".";
    }

    private String unknown(String typed) {
        String name = typed.split("=", 2)[0];
        boolean option = name.startsWith("-");
        boolean command = !option && !line.getSubcommands().isEmpty();
        List<String> known = new ArrayList<>(option ? line.getCommandSpec().optionsMap().keySet()
                : line.getSubcommands().keySet());
        String what = command ? "There is no command “" + name + "”."
                : option ? "“" + name + "” is not an option of “" + line.getCommandName() + "”."
                : "“" + name + "” is one word too many.";
        return what + NearMiss.of(name, known).map(near -> " Did you mean “" + near + "”?").orElse("");
    }

    private static String missing(ArgSpec missing) {
        return missing instanceof OptionSpec option
                ? "After “" + option.longestName() + "” comes " + missing.paramLabel() + ", which is missing."
                : missing.paramLabel() + " is missing.";
    }

    private static String wrongWord(ArgSpec argument, String typed) {
        List<String> words = new ArrayList<>();
        for (Object word : argument.type().getEnumConstants()) {
            words.add(word.toString().toLowerCase(Locale.ROOT));
        }
        Optional<String> near = NearMiss.of(typed, words);
        String name = argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
        return "“" + typed + "” cannot stand for " + name + "; it is one of "
                + String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1) + "."
                + near.map(word -> " Did you mean “" + word + "”?").orElse("");
    }
}
