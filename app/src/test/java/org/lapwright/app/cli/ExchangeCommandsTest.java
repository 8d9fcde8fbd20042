package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.app.files.garage.ClassListFile;
import org.lapwright.app.files.garage.PieceBoxFile;
import org.lapwright.app.store.SqliteGarage;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.OwnListStore.ListKind;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.car.rules.RaceClass;
import org.lapwright.core.car.rules.RaceClasses;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.track.kit.PieceBox;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/** {@code export} and {@code import}: from one garage to another and nothing is lost, doubled or overwritten. */
class ExchangeCommandsTest {
    private static final Instant AT = Instant.parse("2026-03-01T20:15:30.123Z");
    private static final Clock CLOCK = Clock.fixed(AT, ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Path here;
    private Path elsewhere;
    private Path zip;

    private static String example(String name) throws IOException {
        return Files.readString(Path.of("src/main/resources/example", name));
    }

    private static KeptComparison comparison() {
        TimedRun before = TimedRun.of(6.21, 6.235, 6.2, 9.9, 6.22);
        TimedRun after = new TimedRun(
                TimedRun.of(6.1, 6.12, 6.09, 6.11).laps(), List.of(new Overrule(2, LapKind.SLOW, "a cat")));
        return new KeptComparison(
                "Dunlin",
                "Shed loop",
                "red",
                "me",
                "",
                "deeper guide; \"=1+1\"",
                Side.AFTER,
                new Session(List.of(new DrivenRun(Side.BEFORE, before), new DrivenRun(Side.AFTER, after))),
                new TrialSettings(
                        0.1, 0.002, true, Optional.of(RunPlan.parse("AB x 5")), TrialSettings.DEFAULT.prior()),
                false);
    }

    @BeforeEach
    void fill() throws IOException {
        here = folder.resolve("here.db");
        elsewhere = folder.resolve("elsewhere.db");
        zip = folder.resolve("garage.zip");
        try (SqliteGarage garage = SqliteGarage.open(here)) {
            OwnGarage own = new OwnGarage(garage, CLOCK);
            own.keepCar("Dunlin", example("dunlin.car.json"));
            own.keepTrack("Shed loop", example("shed-loop.track.json"));
            KeptComparison kept = comparison();
            garage.keep(kept, new JudgeChange().judge(kept.session(), kept.settings()), "key", AT);
        }
    }

    private Spoken at(Path garage, String... words) {
        return Spoken.with(() -> SqliteGarage.open(garage), words);
    }

    @Test
    void everythingComesOverAndNothingTwice() throws IOException {
        assertThat(at(here, "export", zip.toString()).out()).contains("1 cars, 1 tracks and 1 comparisons");
        assertThat(at(elsewhere, "import", zip.toString()).out())
                .contains("3 came in, 0 were there already, 0 were left out");
        try (SqliteGarage garage = SqliteGarage.open(elsewhere)) {
            assertThat(garage.comparisons()).singleElement().satisfies(saved -> {
                assertThat(saved.kept()).isEqualTo(comparison());
                assertThat(saved.savedAt()).isEqualTo(AT);
            });
            OwnGarage own = new OwnGarage(garage, CLOCK);
            assertThat(own.car("Dunlin").orElseThrow().text()).isEqualTo(example("dunlin.car.json"));
        }
        assertThat(at(elsewhere, "import", zip.toString()).out()).contains("0 came in, 3 were there already");
        assertThat(at(here, "import", zip.toString()).out()).contains("0 came in, 3 were there already");
    }

    @Test
    void theLapsAreATableThatVerdictReads() throws IOException {
        at(here, "export", zip.toString());
        try (ZipFile opened = new ZipFile(zip.toFile())) {
            byte[] table = opened.getInputStream(opened.getEntry("laps.csv")).readAllBytes();
            Path csv = Files.write(folder.resolve("laps.csv"), table);
            assertThat(new String(table, StandardCharsets.UTF_8)).startsWith("session,run,side,lap,lap_s");
            assertThat(Spoken.of("verdict", "--session", csv.toString(), "--json")
                            .status())
                    .isZero();
        }
    }

    @Test
    void whatIsThereIsNotOverwrittenUnlessAsked() throws IOException {
        String other = example("dunlin.car.json").replaceFirst("\"total_g\": ?\\{[^}]*}", "\"total_g\": 76");
        Path file = Files.writeString(folder.resolve("dunlin.json"), other);
        Spoken kept = at(here, "import", file.toString());
        assertThat(kept.status()).isEqualTo(1);
        assertThat(kept.err()).contains("there is another 'Dunlin' already");
        assertThat(at(here, "import", "--replace", file.toString()).out()).contains("1 came in");
    }

    @Test
    void theListOfPiecesGoesAlong() {
        String list = new PieceBoxFile(PieceBox.USUAL).text();
        try (SqliteGarage garage = SqliteGarage.open(here)) {
            garage.keepList(ListKind.PIECES, list, AT);
        }
        at(here, "export", zip.toString());
        assertThat(at(elsewhere, "import", zip.toString()).out()).contains("4 came in");
        try (SqliteGarage garage = SqliteGarage.open(elsewhere)) {
            assertThat(garage.list(ListKind.PIECES)).contains(list);
            garage.keepList(ListKind.PIECES, new PieceBoxFile(new PieceBox(List.of())).text(), AT);
        }
        Spoken kept = at(elsewhere, "import", zip.toString());
        assertThat(kept.out()).contains("0 came in, 3 were there already, 1 were left out");
        assertThat(kept.err()).contains("there is another list of pieces already");
        assertThat(at(elsewhere, "import", "--replace", zip.toString()).out()).contains("1 came in");
    }

    @Test
    void theListOfClassesGoesAlong() {
        String list = new ClassListFile(
                        new RaceClasses(List.of(new RaceClass("Thursday", ClassLimits.NONE, List.of("Dunlin")))))
                .text();
        try (SqliteGarage garage = SqliteGarage.open(here)) {
            garage.keepList(ListKind.CLASSES, list, AT);
        }
        at(here, "export", zip.toString());
        assertThat(at(elsewhere, "import", zip.toString()).out()).contains("4 came in");
        try (SqliteGarage garage = SqliteGarage.open(elsewhere)) {
            assertThat(garage.list(ListKind.CLASSES)).contains(list);
            assertThat(garage.list(ListKind.PIECES)).isEmpty();
        }
    }

    @Test
    void badFilesAreNamedAndTheRestComesIn() throws IOException {
        Path bad = Files.writeString(folder.resolve("bad.json"), "{\"format\": \"lapwright-car/1\", \"name\": 3}");
        Path good = Files.writeString(folder.resolve("good.json"), example("greenshank.car.json"));
        Path odd = Files.writeString(
                folder.resolve("odd.json"), "{\"format\": \"lapwright-comparison/1\", \"car\": \"x\"}");
        Spoken spoken = at(here, "import", bad.toString(), good.toString(), odd.toString());
        assertThat(spoken.status()).isEqualTo(1);
        assertThat(spoken.out()).contains("1 came in, 0 were there already, 2 were left out");
        assertThat(spoken.err()).contains("bad.json: left out", "odd.json: left out, session is missing");
        at(here, "export", zip.toString());
        byte[] whole = Files.readAllBytes(zip);
        Path torn = Files.write(folder.resolve("torn.zip"), Arrays.copyOf(whole, whole.length / 2));
        Spoken half = at(elsewhere, "import", torn.toString());
        assertThat(half.status()).isEqualTo(2);
        assertThat(half.err()).contains("torn.zip");
        assertThat(at(here, "export", zip.toString()).err()).contains("is there already");
        assertThat(at(here, "import", "nowhere.zip").err()).contains("There is no file nowhere.zip");
    }
}
