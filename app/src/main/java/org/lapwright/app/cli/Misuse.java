package org.lapwright.app.cli;

import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with the words behind the program's name, in a sentence for a racer. */
final class Misuse {
    private Misuse() {}

    static String sentence(ParameterException misuse, String... args) {
        if (misuse instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched, args);
        }
        if (misuse instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            return missing(missing.getMissing().get(0), misuse.getCommandLine());
        }
        String said = String.valueOf(misuse.getMessage());
        return said.endsWith(".") ? said : said + ".";
    }

    private static String missing(ArgSpec missing, CommandLine command) {
        String who = missing instanceof OptionSpec option ? option.longestName() : command.getCommandName();
        return who + " needs " + missing.paramLabel() + ". " + String.join(" ", missing.description());
    }

    private static String unmatched(UnmatchedArgumentException misuse, String... args) {
        CommandLine command = misuse.getCommandLine();
        List<String> found = misuse.getUnmatched();
        if (found.isEmpty()) {
            // The parser does not say which word it stumbled over behind an option that takes several.
            found = Arrays.stream(args)
                    .filter(word -> isUnknownOption(word, command))
                    .limit(1)
                    .toList();
            return found.isEmpty()
                    ? misuse.getMessage() + "."
                    : unmatched(new UnmatchedArgumentException(command, found), args);
        }
        String first = found.get(0);
        String what;
        if (isUnknownOption(first, command)) {
            what = "there is no option '" + first + "' here.";
        } else if (command.getParent() == null) {
            what = "there is no command '" + first + "'.";
        } else {
            what = "'" + first + "' is one word too many for " + command.getCommandName() + ".";
        }
        List<String> suggestions = misuse.getSuggestions();
        // The nearest comes first; those behind it are seldom like it at all.
        return suggestions.isEmpty() ? what : what + " Did you mean '" + suggestions.get(0) + "'?";
    }

    private static boolean isUnknownOption(String word, CommandLine command) {
        return word.length() > 1
                && word.startsWith("-")
                && !command.getCommandSpec().optionsMap().containsKey(word.split("=", 2)[0]);
    }
}
