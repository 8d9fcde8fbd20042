package org.lapwright.app.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.web.view.AssetPaths;

/** The bundled files. Their address holds a fingerprint of their content, so a browser may keep them for ever. */
final class Assets {
    private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js";

    private final List<Asset> assets = List.of(
            load("lapwright.css", "/web/lapwright.css", "text/css; charset=utf-8"),
            load("htmx.js", HTMX, "text/javascript; charset=utf-8"),
            load("lapwright.js", "/web/lapwright.js", "text/javascript; charset=utf-8"),
            load("icon.svg", "/web/icon.svg", "image/svg+xml"));

    AssetPaths paths() {
        return new AssetPaths(path(0), path(1), path(2), path(3));
    }

    /** Every address that answers. */
    List<String> addresses() {
        List<String> addresses = new ArrayList<>();
        for (int i = 0; i < assets.size(); i++) {
            addresses.add(path(i));
        }
        return addresses;
    }

    /** Answers a request for {@code /assets/{version}/{name}}. */
    void serve(Context context) {
        Optional<Asset> found = assets.stream()
                .filter(asset -> asset.name().equals(context.pathParam("name"))
                        && asset.version().equals(context.pathParam("version")))
                .findFirst();
        send(context, found.orElseThrow(Problem::notFound));
        context.header("Cache-Control", "public, max-age=31536000, immutable");
    }

    /** Answers browsers that ask for an icon without reading the page. */
    void serveIcon(Context context) {
        send(context, assets.get(3));
        context.header("Cache-Control", "public, max-age=86400");
    }

    private static void send(Context context, Asset asset) {
        context.contentType(asset.type()).result(asset.bytes());
    }

    private String path(int index) {
        Asset asset = assets.get(index);
        return "/assets/" + asset.version() + "/" + asset.name();
    }

    private static Asset load(String name, String resource, String type) {
        try (InputStream in = Assets.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the program is incomplete: " + resource + " is missing");
            }
            byte[] bytes = in.readAllBytes();
            return new Asset(name, Fingerprint.of(bytes).substring(0, 12), type, bytes);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the program is damaged: " + resource + " cannot be read", unreadable);
        }
    }

    /** A file; the array is never changed. */
    @SuppressWarnings("ArrayRecordComponent")
    private record Asset(String name, String version, String type, byte[] bytes) {}

    /** The text of a bundled file. */
    static String text(String resource) {
        return new String(load("text", resource, "").bytes(), StandardCharsets.UTF_8);
    }
}
