package org.lapwright.app.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinBindException;
import jakarta.servlet.DispatcherType;
import jakarta.servlet.ServletException;
import java.io.UncheckedIOException;
import java.net.BindException;
import java.util.EnumSet;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.ee10.servlet.FilterHolder;
import org.eclipse.jetty.ee10.servlet.ServletHolder;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.web.run.RunStreamServlet;

/** The web app on this machine. */
public final class WebApp implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(WebApp.class.getName());

    /** Held, because the logging system forgets levels of loggers that nobody holds. */
    private static final List<Logger> QUIET = List.of(Logger.getLogger("io.javalin"), Logger.getLogger("org.eclipse"));

    private static final int MOST_THREADS = 12;
    private static final int FEWEST_THREADS = 4;

    private final Assets assets = new Assets();
    private final Pages pages = new Pages(assets.paths());
    private final Answers answers = new Answers(pages);
    private final UseCases useCases;
    private final RunRoutes run;
    private final GateRoutes gate;
    private final Javalin server;

    /** The app that answers by {@code useCases}; {@link #start} opens it. */
    public WebApp(UseCases useCases) {
        this.useCases = useCases;
        this.run = new RunRoutes(useCases, pages);
        this.gate = new GateRoutes(useCases, pages);
        QUIET.forEach(logger -> logger.setLevel(Level.WARNING));
        this.server = Javalin.create(this::configure);
    }

    /**
     * Opens the app on this machine only.
     *
     * @param port 0 for any that is free
     * @throws UncheckedIOException with a sentence for the racer, if the port is taken
     */
    public WebApp start(int port) {
        try {
            server.start("127.0.0.1", port);
            gate.resume();
            return this;
        } catch (JavalinBindException taken) {
            throw new UncheckedIOException(
                    new BindException("port %d is taken by another program; choose another one".formatted(port)));
        }
    }

    /** The port it listens on. */
    public int port() {
        return server.port();
    }

    @Override
    public void close() {
        gate.close();
        run.close();
        server.stop();
    }

    private void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.concurrency.useVirtualThreads = false;
        config.http.maxRequestSize = Door.MOST_BYTES;
        config.http.prefer405over404 = true;
        // An uploaded file stays in memory and under the limit of every other request.
        config.jetty.multipartConfig.maxInMemoryFileSize((int) Door.MOST_BYTES, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxFileSize(Door.MOST_BYTES, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxTotalRequestSize(Door.MOST_BYTES, SizeUnit.BYTES);
        // Nothing to gain on one machine.
        config.http.compressionStrategy = CompressionStrategy.NONE;
        QueuedThreadPool threads = new QueuedThreadPool(MOST_THREADS, FEWEST_THREADS);
        threads.setName("web");
        config.jetty.threadPool = threads;
        config.jetty.modifyHttpConfiguration(WebApp::tighten);
        config.jetty.modifyServer(jetty -> jetty.setErrorHandler(new Unreadable(answers)));
        config.jetty.modifyServletContextHandler(handler -> {
            handler.addFilter(new FilterHolder(new Door(answers)), "/*", EnumSet.of(DispatcherType.REQUEST));
            handler.addServlet(new ServletHolder(new RunStreamServlet(run.stream())), Door.RUN_STREAM);
            handler.addServlet(new ServletHolder(new RunStreamServlet(gate.stream())), Door.GATE_STREAM);
        });
        route(config.routes);
        routeProblems(config.routes);
        config.router.javaLangErrorHandler((response, error) -> {
            LOG.log(Level.SEVERE, "fault while answering", error);
            response.setStatus(500);
        });
    }

    private static void tighten(HttpConfiguration http) {
        http.setSendServerVersion(false);
        http.setSendXPoweredBy(false);
        http.setSendDateHeader(false);
    }

    private void route(RoutesConfig routes) {
        CompareRoutes compare = new CompareRoutes(useCases, pages);
        KeptRoutes kept = new KeptRoutes(useCases, pages);
        LadderRoutes ladder = new LadderRoutes(useCases, pages);
        WordRoutes words = new WordRoutes(useCases.glossary(), pages);
        TrackRoutes track = new TrackRoutes(useCases, pages);
        DrawRoutes draw = new DrawRoutes(useCases.physics(), pages);
        VerdictApi api = new VerdictApi(useCases.judgeChange(), useCases.knownDriver());
        routes.get("/", compare::open);
        routes.post("/", compare::press);
        routes.get("/ladder", ladder::show);
        routes.get("/kept", kept::list);
        routes.get("/kept/{id}", kept::one);
        routes.post("/kept/{id}/remove", kept::remove);
        routes.post("/kept/{id}/bring-back", kept::bringBack);
        routes.post("/example/remove", kept::removeExample);
        routes.post("/example/bring-back", kept::bringExampleBack);
        routeBench(routes);
        ScreeningRoutes screening = new ScreeningRoutes(useCases, pages);
        routes.get("/run/screening", screening::show);
        routes.post("/run/screening", screening::press);
        routes.get("/run/gate", gate::show);
        routes.post("/run/gate", gate::press);
        routes.get("/run", run::show);
        routes.post("/run", run::begin);
        routes.post("/run/press", run::press);
        routes.post("/api/passes", run::passes);
        NextRoutes next = new NextRoutes(useCases, pages);
        routes.get("/next", next::show);
        routes.get("/next/learned", next::learned);
        routes.get("/next/score", next::score);
        BestRoutes best = new BestRoutes(useCases, pages);
        routes.get("/next/best", best::show);
        routes.post("/next/best", best::begin);
        routes.post("/next/best/end", best::end);
        routes.get("/next/even", new EvenRoutes(useCases, pages)::show);
        routes.get("/words", words::all);
        routes.get("/words/{word}", words::one);
        routes.get("/track", track::show);
        routes.get("/track/box", track::box);
        routes.get("/track/download", track::download);
        routes.get("/track/how-sure", track::howSure);
        routes.get("/track/draw", draw::open);
        routes.post("/track/draw", draw::press);
        PaperRoutes paper = new PaperRoutes(useCases.physics().garage(), pages);
        routes.get("/track/print", paper::print);
        routes.get("/track/tiles", paper::tiles);
        routes.get("/track/lanes.svg", paper::lanes);
        RailRoutes rails = new RailRoutes(useCases.physics().garage(), pages);
        routes.get("/track/rails", Forms.aboutATrack(rails::open, track::show));
        routes.post("/track/rails", rails::press);
        routes.get("/track/file", draw::openFile);
        routes.post("/track/file", draw::pressFile);
        routeLine(routes);
        routes.post("/api/verdict", api::judge);
        routes.get("/assets/{version}/{name}", assets::serve);
        routes.get("/favicon.ico", assets::serveIcon);
    }

    private void routeLine(RoutesConfig routes) {
        LineRoutes line = new LineRoutes(useCases.physics(), pages);
        routes.get("/track/line", line::open);
        routes.post("/track/line", line::press);
        KitRoutes kit = new KitRoutes(useCases.physics(), pages);
        routes.get("/track/pieces", kit::open);
        routes.post("/track/pieces", kit::press);
    }

    private void routeBench(RoutesConfig routes) {
        BenchRoutes bench = new BenchRoutes(useCases, pages);
        routes.get("/bench", bench::list);
        routes.get("/bench/car", bench::car);
        routes.get("/bench/car.json", bench::download);
        routes.get("/bench/share.json", Forms.aboutACar(bench::share, bench::list));
        routes.get("/bench/measure", bench::measure);
        GuidedRoutes guided = new GuidedRoutes(useCases.physics().garage(), pages);
        routes.get("/bench/guided", Forms.aboutACar(guided::open, bench::list));
        routes.post("/bench/guided", guided::press);
        routes.post("/bench/measure", bench::keepMeasured);
        routes.get("/bench/file", bench::askForFile);
        routes.post("/bench/file", bench::keepFile);
        ChangeRoutes change = new ChangeRoutes(useCases, pages);
        routes.get("/bench/change", Forms.aboutACar(change::open, bench::list));
        routes.post("/bench/change", change::press);
        SheetRoutes sheet = new SheetRoutes(useCases, pages);
        routes.get("/bench/sheet", Forms.aboutACar(sheet::show, bench::list));
        routes.get("/bench/sheet.pdf", Forms.aboutACar(sheet::pdf, bench::list));
        routes.get("/bench/sheet.csv", Forms.aboutACar(sheet::csv, bench::list));
        PhotoRoutes photo = new PhotoRoutes(useCases, pages);
        routes.get("/bench/photo", Forms.aboutACar(photo::show, bench::list));
        routes.get("/bench/photo.jpg", Forms.aboutACar(photo::picture, bench::list));
        routes.post(Door.PHOTO, photo::press);
        ShelfRoutes shelf = new ShelfRoutes(useCases, pages);
        routes.get("/shelf", shelf::list);
        routes.post("/shelf", shelf::add);
        routes.get("/shelf/part", Forms.aboutAPart(shelf::part, shelf::list));
        routes.post("/shelf/part", shelf::press);
        routes.get("/shelf/part.json", Forms.aboutAPart(shelf::download, shelf::list));
        HistoryRoutes history = new HistoryRoutes(useCases, pages);
        routes.get("/bench/history", Forms.aboutACar(history::show, bench::list));
        routes.post("/bench/undo", history::undo);
        routes.get("/bench/label", bench::car);
        routes.post("/bench/label", bench::label);
        ClassRoutes classes = new ClassRoutes(useCases, pages);
        routes.get("/bench/classes", classes::open);
        routes.post("/bench/classes", classes::press);
        routes.get("/bench/class", bench::car);
        routes.post("/bench/class", classes::choose);
        routes.post("/bench/back", history::goTo);
        routes.get("/bench/compare", Forms.aboutACar(history::compare, bench::list));
    }

    private void routeProblems(RoutesConfig routes) {
        routes.exception(Problem.class, (problem, context) -> answer(context, problem));
        routes.exception(
                StoreException.class,
                (failed, context) ->
                        answer(context, new Problem(503, "The storage failed.", String.valueOf(failed.getMessage()))));
        routes.exception(
                HttpResponseException.class,
                (refused, context) -> answer(
                        context,
                        switch (refused.getStatus()) {
                            case 404 -> Problem.notFound();
                            case 405 -> Problem.wrongMethod();
                            case 413 ->
                                context.path().equals(Door.PHOTO) ? Problem.photoTooLarge() : Problem.tooLarge();
                            default ->
                                new Problem(
                                        refused.getStatus(),
                                        "This request cannot be answered.",
                                        "Nothing was changed.");
                        }));
        // The server's only way to say that a form with a file in it cannot be read.
        routes.exception(
                ServletException.class, (unreadable, context) -> answer(context, Problem.unreadable(unreadable)));
        routes.exception(Exception.class, (fault, context) -> {
            LOG.log(Level.SEVERE, "fault while answering", fault);
            answer(context, Problem.fault());
        });
    }

    private void answer(Context context, Problem problem) {
        Answers.Body body = answers.of(problem, context.path());
        context.status(problem.status()).contentType(body.type()).result(body.bytes());
    }
}
