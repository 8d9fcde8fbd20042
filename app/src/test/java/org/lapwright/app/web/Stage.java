package org.lapwright.app.web;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.lapwright.app.usecase.DescribeLaps;
import org.lapwright.app.usecase.GarageStore.ExampleState;
import org.lapwright.app.usecase.Glossary;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KeepComparison;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.ShowKept;
import org.lapwright.app.usecase.ShowLadder;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/** The web app on a free port, with hand-made verdicts and a garage in memory. */
final class Stage implements AutoCloseable {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-14T19:30:00Z"), ZoneOffset.UTC);

    private final FakeGarage garage = new FakeGarage();
    private final WebApp app;

    Stage() {
        this(0, HandMade::judge);
    }

    private Stage(int port, BiFunction<Session, TrialSettings, Verdict> judging) {
        JudgeChange judge = new JudgeChange(judging);
        app = new WebApp(new UseCases(
                        new PlainReader(),
                        new DescribeLaps(),
                        judge,
                        new KeepComparison(garage, judge, CLOCK),
                        new ShowKept(garage, CLOCK),
                        new ShowLadder(garage, HandMade::rank),
                        new Glossary()))
                .start(port);
    }

    /** On a port of one's choice. */
    static Stage on(int port) {
        return new Stage(port, HandMade::judge);
    }

    /** With a judge that has a fault in it. */
    static Stage thatFails() {
        return new Stage(0, (session, settings) -> {
            throw new IllegalStateException("secret");
        });
    }

    FakeGarage garage() {
        return garage;
    }

    int port() {
        return app.port();
    }

    String url(String path) {
        return "http://127.0.0.1:" + app.port() + path;
    }

    /** Cars named after wading birds on an invented track. */
    Stage withExampleGarage() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(7);
        String[] cars = {"Dunlin", "Sanderling", "Turnstone", "Curlew", "Whimbrel"};
        double[] paces = {6.36, 6.38, 6.52, 6.71, 6.74};
        for (int i = 0; i < cars.length; i++) {
            garage.keep(
                    new KeptComparison(
                            cars[i],
                            "Shed loop",
                            "red",
                            "",
                            "4 g of ballast behind the guide",
                            Side.AFTER,
                            Session.of(run(random, paces[i] + 0.09), run(random, paces[i])),
                            TrialSettings.DEFAULT,
                            true),
                    HandMade.judge(Session.of(run(random, 6), run(random, 6)), TrialSettings.DEFAULT),
                    "example-" + i,
                    CLOCK.instant());
        }
        garage.putExample(ExampleState.SHOWN);
        return this;
    }

    private static TimedRun run(RandomGenerator random, double pace) {
        List<Double> laps = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            laps.add(Math.round(1000 * (pace + 0.04 * random.nextGaussian())) / 1000.0);
        }
        return TimedRun.of(laps.stream().mapToDouble(Double::doubleValue).toArray());
    }

    @Override
    public void close() {
        app.close();
    }

    /** To look at the pages while working on them. */
    public static void main(String[] args) {
        Stage stage = on(args.length > 0 ? Integer.parseInt(args[0]) : 0).withExampleGarage();
        Runtime.getRuntime().addShutdownHook(new Thread(stage::close));
    }
}
