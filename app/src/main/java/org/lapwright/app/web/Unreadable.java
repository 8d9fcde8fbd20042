package org.lapwright.app.web;

import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;

/** Answers what the server refuses before our door sees it, such as an address that cannot be decoded. */
final class Unreadable extends ErrorHandler {
    private final Answers answers;

    Unreadable(Answers answers) {
        this.answers = answers;
    }

    @Override
    protected void generateResponse(
            Request request,
            Response response,
            int code,
            @Nullable String message,
            @Nullable Throwable cause,
            Callback callback) {
        setHeaders(response.getHeaders());
        Content.Sink.write(response, true, code == 304 ? "" : new String(body(code), StandardCharsets.UTF_8), callback);
    }

    private static void setHeaders(HttpFields.Mutable fields) {
        Door.HEADERS.forEach((name, value) -> fields.put(new HttpField(name, value)));
        fields.put(HttpHeader.CONTENT_TYPE, Pages.HTML);
    }

    private byte[] body(int status) {
        Problem problem = status >= 500
                ? Problem.fault()
                : new Problem(
                        status, "This request cannot be read.", "The address may be mistyped. Nothing was changed.");
        return answers.of(problem, "").bytes();
    }
}
