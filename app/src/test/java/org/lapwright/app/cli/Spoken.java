package org.lapwright.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.function.Supplier;
import org.lapwright.app.capture.Gates;
import org.lapwright.app.store.MemoryGarage;
import org.lapwright.app.usecase.DescribeLaps;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.Glossary;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.advice.FindBestSetUp;
import org.lapwright.app.usecase.advice.LearnCar;
import org.lapwright.app.usecase.advice.SuggestChanges;
import org.lapwright.app.usecase.physics.ForecastLap;
import org.lapwright.app.usecase.physics.WorkOutNumbers;
import org.lapwright.core.fit.CarFit;
import org.lapwright.core.prediction.LapForecaster;

/**
 * What a command said, and its exit status.
 *
 * @param status the exit status
 * @param out standard output
 * @param err standard error
 */
record Spoken(int status, String out, String err) {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Runs a command in this process, with an empty garage. */
    static Spoken of(String... words) {
        return with(MemoryGarage::new, words);
    }

    /** Runs a command in this process, with this garage. */
    static Spoken with(Supplier<GarageStore> garage, String... words) {
        return with(garage, new Gates(System::nanoTime), words);
    }

    /** Runs a command in this process, with these gates. */
    static Spoken listening(Gates gates, String... words) {
        return with(MemoryGarage::new, gates, words);
    }

    private static Spoken with(Supplier<GarageStore> garage, Gates gates, String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new Commands(
                        new Commands.LapQuestions(new DescribeLaps(), new JudgeChange()),
                        new Commands.PhysicsQuestions(
                                new WorkOutNumbers(),
                                new ForecastLap(LapForecaster.Settings.USUAL),
                                new SuggestChanges(40),
                                new FindBestSetUp(4000, 20),
                                new LearnCar(CarFit.Settings.USUAL)),
                        new Glossary(),
                        garage,
                        "1.2.3")
                .listening(gates)
                .printingTo(new PrintWriter(out), new PrintWriter(err))
                .run(words);
        return new Spoken(status, out.toString().replace(System.lineSeparator(), "\n"), err.toString());
    }

    /** Standard output as the one JSON document that it should be. */
    JsonNode json() {
        try {
            return JSON.readerFor(JsonNode.class)
                    .with(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .readValue(out);
        } catch (JsonProcessingException wrong) {
            throw new AssertionError("not one JSON document: " + out + err, wrong);
        }
    }
}
