package org.lapwright.app.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Sends exactly the bytes it is given: a well-behaved client would refuse to send what has to be tested here. */
final class RawHttp {
    private RawHttp() {}

    static Answer send(int port, String method, String target, List<String> headers, String body) {
        List<String> lines = new ArrayList<>(List.of(method + " " + target + " HTTP/1.1"));
        lines.addAll(headers);
        lines.add("Connection: close");
        if (!body.isEmpty()) {
            lines.add("Content-Length: " + body.getBytes(StandardCharsets.UTF_8).length);
        }
        return send(port, String.join("\r\n", lines) + "\r\n\r\n" + body);
    }

    static Answer send(int port, String request) {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            return Answer.read(socket.getInputStream());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /**
     * What came back.
     *
     * @param status of HTTP; 0 if nothing came
     * @param head all headers, in lower case
     * @param body the body, with chunk sizes still in it
     */
    record Answer(int status, String head, String body) {
        private static Answer read(InputStream in) throws IOException {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            in.transferTo(bytes);
            String text = bytes.toString(StandardCharsets.UTF_8);
            int end = text.indexOf("\r\n\r\n");
            if (end < 0) {
                return new Answer(0, "", text);
            }
            String head = text.substring(0, end);
            return new Answer(
                    Integer.parseInt(head.substring(9, 12)), head.toLowerCase(Locale.ROOT), text.substring(end + 4));
        }
    }
}
