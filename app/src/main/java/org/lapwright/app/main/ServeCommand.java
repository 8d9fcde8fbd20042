package org.lapwright.app.main;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.lapwright.app.store.DataFolder;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.web.WebApp;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The web app, until it is stopped. */
@Command(name = "serve", description = "Open Lapwright's pages for your browser, on this computer only, until Ctrl-C.")
final class ServeCommand implements Callable<Integer> {
    private static final int USUAL_PORT = 8737;

    private static final Logger SERVER_LOG = Logger.getLogger("io.javalin");

    private final Wiring wiring;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "Number of the port in the address; 0 takes any that is free (default: ${DEFAULT-VALUE}).",
            defaultValue = "" + USUAL_PORT)
    private int port;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    ServeCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    /** A port that is taken is told in a sentence; what the server logs about it would only bury that. */
    private WebApp start(WebApp app) {
        Level usual = SERVER_LOG.getLevel();
        SERVER_LOG.setLevel(Level.OFF);
        try {
            return app.start(port);
        } finally {
            SERVER_LOG.setLevel(usual);
        }
    }

    /** Beside the pages, which need not wait for it. */
    private void backUpForToday(PrintWriter err) {
        Thread backup = new Thread(
                () -> {
                    try {
                        wiring.upkeep().backUpForToday(Instant.now());
                    } catch (StoreException failed) {
                        err.println("lapwright: today's backup was not made. " + failed.getMessage());
                        err.flush();
                    }
                },
                "backup");
        backup.setDaemon(true);
        backup.start();
    }

    @Override
    public Integer call() throws InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        if (port < 0 || port > 65_535) {
            err.println("lapwright: --port is " + port + "; it must be from 0 to 65535.");
            return 2;
        }
        DataFolder folder = wiring.dataFolder();
        try (GarageStore garage = wiring.openGarage(folder);
                WebApp app = start(new WebApp(wiring.useCases(garage)))) {
            wiring.exampleGarage(garage).putInAtFirstStart();
            out.println("Lapwright is at http://127.0.0.1:" + app.port() + "/");
            out.println("Your data is in " + folder.path() + ". Nothing leaves this computer. Ctrl-C stops it.");
            out.flush();
            backUpForToday(err);
            CountDownLatch stopped = new CountDownLatch(1);
            Runtime.getRuntime().addShutdownHook(new Thread(() -> {
                app.close();
                garage.close();
                stopped.countDown();
            }));
            stopped.await();
        } catch (UncheckedIOException taken) {
            Throwable cause = Objects.requireNonNullElse(taken.getCause(), taken);
            err.println("lapwright: " + cause.getMessage()
                    + ". Try ./lapwright serve --port 0, which takes any that is free.");
            return 2;
        }
        return 0;
    }
}
