package org.lapwright.app.web;

import jakarta.servlet.Filter;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.photo.Photo;

/**
 * What every request has to pass before anything else sees it, whatever its method or address.
 *
 * <p>The host must be this machine by name (against DNS rebinding); a request that changes something must come from our
 * own pages (against cross-site requests); nothing may be larger than {@value #MOST_BYTES} bytes, but a photo, which may have
 * {@value Photo#MOST_BYTES}. Every answer carries
 * the headers that keep a browser from doing more than the pages need. Sources: OWASP Application Security
 * Verification Standard 5.0, chapters 3 and 4; Fetch Metadata (W3C); RFC 9110, 7.4 for 421.
 */
final class Door implements Filter {
    static final long MOST_BYTES = 10_000_000;

    /** Where pages are told how a drive stands. */
    static final String RUN_STREAM = "/run/stream";

    /** Where pages are told how the gate on this computer is doing. */
    static final String GATE_STREAM = "/run/gate/stream";

    /** Where a photo is sent, which may be longer than anything else. */
    static final String PHOTO = "/bench/photo";

    /** A photo, and the form around it. */
    static final long MOST_PHOTO_BYTES = Photo.MOST_BYTES + 100_000;

    /** On every answer. The referrer policy is not "no-referrer": browsers then send "Origin: null" with our forms. */
    static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy",
            "default-src 'self'; object-src 'none'; base-uri 'none'; frame-ancestors 'none'; form-action 'self'",
            "X-Content-Type-Options",
            "nosniff",
            "Referrer-Policy",
            "same-origin",
            "Cross-Origin-Resource-Policy",
            "same-origin",
            "X-Frame-Options",
            "DENY",
            "Cache-Control",
            "no-cache");

    private static final Set<String> SAFE = Set.of("GET", "HEAD");
    private static final Set<String> KNOWN = Set.of("GET", "HEAD", "POST");

    private final Answers answers;

    Door(Answers answers) {
        this.answers = answers;
    }

    @Override
    public void doFilter(ServletRequest request, ServletResponse response, FilterChain chain)
            throws IOException, ServletException {
        HttpServletRequest asked = (HttpServletRequest) request;
        HttpServletResponse answer = (HttpServletResponse) response;
        HEADERS.forEach(answer::setHeader);
        Optional<Problem> refusal = refusal(asked);
        if (refusal.isPresent()) {
            refuse(asked, answer, refusal.get());
        } else {
            chain.doFilter(request, response);
        }
    }

    private void refuse(HttpServletRequest asked, HttpServletResponse answer, Problem problem) throws IOException {
        Answers.Body body = answers.of(problem, asked.getRequestURI());
        answer.setStatus(problem.status());
        if (problem.status() == 405) {
            answer.setHeader("Allow", "GET, HEAD, POST");
        }
        if (problem.status() == 413) {
            // The rest of the body is not read, so the connection cannot be used again.
            answer.setHeader("Connection", "close");
        }
        answer.setContentType(body.type());
        if (!asked.getMethod().equals("HEAD")) {
            answer.getOutputStream().write(body.bytes());
        }
    }

    private static Optional<Problem> refusal(HttpServletRequest asked) {
        if (!isThisMachine(asked)) {
            return Optional.of(new Problem(
                    421,
                    "This program answers on this machine only.",
                    "Open it as http://127.0.0.1:" + asked.getLocalPort() + "/ on the machine it runs on."));
        }
        if (!KNOWN.contains(asked.getMethod())) {
            return Optional.of(Problem.wrongMethod());
        }
        if (!SAFE.contains(asked.getMethod()) && !isOurOwn(asked)) {
            return Optional.of(new Problem(
                    403,
                    "This request did not come from a page of this program.",
                    "Nothing was changed. Open the page here and press the button again."));
        }
        if (asked.getRequestURI().equals(PHOTO)) {
            return asked.getContentLengthLong() > MOST_PHOTO_BYTES
                    ? Optional.of(Problem.photoTooLarge())
                    : Optional.empty();
        }
        return asked.getContentLengthLong() > MOST_BYTES ? Optional.of(Problem.tooLarge()) : Optional.empty();
    }

    private static boolean isThisMachine(HttpServletRequest asked) {
        String named = asked.getHeader("Host");
        // An address in the request line outranks the header (RFC 9112, 3.2.2), so both have to be ours.
        String effective = asked.getServerName() + ":" + asked.getServerPort();
        return named != null
                && hosts(asked).contains(named.toLowerCase(Locale.ROOT))
                && hosts(asked).contains(effective.toLowerCase(Locale.ROOT));
    }

    private static List<String> hosts(HttpServletRequest asked) {
        int port = asked.getLocalPort();
        List<String> withPort = List.of("localhost:" + port, "127.0.0.1:" + port, "[::1]:" + port);
        return port == 80
                ? List.of(withPort.get(0), withPort.get(1), withPort.get(2), "localhost", "127.0.0.1", "[::1]")
                : withPort;
    }

    private static boolean isOurOwn(HttpServletRequest asked) {
        String site = asked.getHeader("Sec-Fetch-Site");
        String origin = asked.getHeader("Origin");
        if (site == null && origin == null) {
            // No browser's form can do this: the sender is a program of the racer's own.
            return isJson(asked.getContentType()) || asked.getHeader("HX-Request") != null;
        }
        boolean siteIsOurs = site == null || site.equals("same-origin") || site.equals("none");
        boolean originIsOurs = origin == null || origin.equalsIgnoreCase("http://" + asked.getHeader("Host"));
        return siteIsOurs && originIsOurs;
    }

    static boolean isJson(@Nullable String contentType) {
        if (contentType == null) {
            return false;
        }
        String type = contentType.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
        return type.equals("application/json");
    }
}
