package org.lapwright.app.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import org.lapwright.app.web.view.AssetPaths;
import org.lapwright.app.web.view.Shell;
import org.lapwright.app.web.view.Shell.Tab;

/** Fills the templates, which were compiled when the program was built. */
final class Pages {
    static final String HTML = "text/html; charset=utf-8";

    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);
    private final AssetPaths assets;

    Pages(AssetPaths assets) {
        this.assets = assets;
    }

    Shell shell(String title, Tab current) {
        return new Shell(title, current, assets);
    }

    String text(String template, Object page) {
        StringOutput text = new StringOutput(16_384);
        templates.render(template, page, text);
        return text.toString();
    }

    void show(Context context, String template, Object page) {
        context.contentType(HTML).result(text(template, page).getBytes(StandardCharsets.UTF_8));
    }
}
