package org.lapwright.app.main;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lapwright.app.files.Answers;
import org.lapwright.app.files.LapReading;
import org.lapwright.app.files.LapText;
import org.lapwright.app.files.Question.Topic;
import org.lapwright.app.files.ReadRun;
import org.lapwright.app.usecase.LapBoxReader;

/** Reads the boxes of the pages with the reader of lap files. */
final class PastedLaps implements LapBoxReader {
    @Override
    public Reading read(String text, Map<String, String> answers) {
        LapReading reading = LapText.read(text, given(answers));
        List<ReadRun> runs = reading.runs();
        boolean sided =
                !runs.isEmpty() && runs.stream().allMatch(run -> run.side().isPresent());
        return new Reading(
                runs.stream().map(ReadRun::run).toList(),
                sided ? runs.stream().map(run -> run.side().orElseThrow()).toList() : List.of(),
                text.isBlank() ? "" : reading.understoodAs(),
                reading.problems().stream()
                        .map(problem -> new Problem(problem.line(), problem.text(), problem.what(), problem.remedy()))
                        .toList(),
                reading.questions().stream().map(PastedLaps::asked).toList());
    }

    private static Question asked(org.lapwright.app.files.Question question) {
        return new Question(
                question.topic().name().toLowerCase(Locale.ROOT),
                question.text(),
                question.choices().stream()
                        .map(choice -> new Choice(choice.code(), choice.label()))
                        .toList());
    }

    private static Answers given(Map<String, String> answers) {
        Map<Topic, String> byTopic = new EnumMap<>(Topic.class);
        for (Topic topic : Topic.values()) {
            String answer = answers.get(topic.name().toLowerCase(Locale.ROOT));
            if (answer != null) {
                byTopic.put(topic, answer);
            }
        }
        return new Answers(byTopic);
    }
}
