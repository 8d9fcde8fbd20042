package org.lapwright.app.cli;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.lapwright.app.usecase.Glossary;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One word of the trade. */
@Command(name = "explain", description = "Explain one word of the trade; without a word, list those there are.")
final class ExplainCommand implements Callable<Integer> {
    private final Glossary glossary;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..*", paramLabel = "WORD", description = "Such as: braid, or: missed gate.")
    private List<String> words = List.of();

    @Option(names = "--json", description = Json.OPTION)
    private boolean json;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    ExplainCommand(Glossary glossary) {
        this.glossary = glossary;
    }

    /**
     * A word in JSON.
     *
     * @param word the word
     * @param meaning what it means
     * @param see other words that help
     */
    record WordJson(
            @JsonProperty("word") String word,
            @JsonProperty("meaning") String meaning,
            @JsonProperty("see") List<String> see) {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (words.isEmpty()) {
            out.println(
                    json
                            ? Json.of(glossary.words().stream()
                                    .map(ExplainCommand::json)
                                    .toList())
                            : glossary.words().stream().map(Glossary.Word::term).collect(Collectors.joining(", ")));
            return 0;
        }
        String asked = String.join(" ", words);
        Glossary.Word word = glossary.find(asked).orElseThrow(() -> unknown(asked));
        if (json) {
            out.println(Json.of(json(word)));
        } else {
            out.println(word.term() + ": " + word.text());
            if (!word.see().isEmpty()) {
                out.println("See also " + String.join(", ", word.see()) + ".");
            }
        }
        return 0;
    }

    private BadInput unknown(String asked) {
        Optional<Glossary.Word> nearest = glossary.nearest(asked);
        return new BadInput("'" + asked + "' is not explained here."
                + nearest.map(word -> " Did you mean '" + word.term() + "'?")
                        .orElse(" Without a word, explain lists those there are."));
    }

    private static WordJson json(Glossary.Word word) {
        return new WordJson(word.term(), word.text(), word.see());
    }
}
