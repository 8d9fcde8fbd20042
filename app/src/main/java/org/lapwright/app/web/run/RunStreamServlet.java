package org.lapwright.app.web.run;

import jakarta.servlet.AsyncContext;
import jakarta.servlet.http.HttpServlet;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * The address of a {@link RunStream}. A servlet of its own, because the web framework's events touch the answer once more after the
 * viewer has left, when there is none any longer.
 */
public final class RunStreamServlet extends HttpServlet {
    private static final long serialVersionUID = 1;
    private static final Logger LOG = Logger.getLogger(RunStreamServlet.class.getName());

    private final transient RunStream stream;

    /** The address of {@code stream}. */
    public RunStreamServlet(RunStream stream) {
        this.stream = stream;
    }

    @Override
    protected void doGet(HttpServletRequest asked, HttpServletResponse answer) throws IOException {
        String seen = Optional.ofNullable(asked.getHeader("Last-Event-ID"))
                .or(() -> Optional.ofNullable(asked.getParameter("seen")))
                .orElse("");
        answer.setContentType("text/event-stream");
        answer.setCharacterEncoding("utf-8");
        AsyncContext async = asked.startAsync();
        async.setTimeout(0);
        OutputStream out = answer.getOutputStream();
        if (!stream.open(new Connection(async, out), seen)) {
            answer.setStatus(HttpServletResponse.SC_SERVICE_UNAVAILABLE);
            async.complete();
        }
    }

    private record Connection(AsyncContext async, OutputStream out) implements RunStream.Viewer {
        @Override
        public void send(String text) throws IOException {
            try {
                out.write(text.getBytes(StandardCharsets.UTF_8));
                out.flush();
            } catch (IllegalStateException gone) {
                throw new IOException(gone);
            }
        }

        @Override
        public void close() {
            try {
                async.complete();
            } catch (IllegalStateException already) {
                LOG.log(Level.FINE, "the connection was over", already);
            }
        }
    }
}
