package org.lapwright.app.capture;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where an MQTT broker is: {@code mqtt://[user:password@]host[:port][/base]}, with TLS {@code mqtts}.
 *
 * @param host its name or address
 * @param port its port
 * @param tls whether the connection is encrypted
 * @param base what topics begin with
 * @param user who asks, as user and password; empty where the broker asks nobody
 */
record BrokerAddress(String host, int port, boolean tls, String base, Optional<User> user) {
    private static final int PLAIN_PORT = 1883;
    private static final int TLS_PORT = 8883;
    private static final String USUAL_BASE = "lapwright";

    /** Who asks. */
    record User(String name, byte[] password) {}

    /**
     * Reads an address.
     *
     * @throws IOException if it is none, with what would be right
     */
    static BrokerAddress parse(String text) throws IOException {
        URI uri;
        try {
            uri = URI.create(text);
        } catch (IllegalArgumentException wrong) {
            throw notOne(wrong);
        }
        boolean tls = "mqtts".equals(uri.getScheme());
        String host = uri.getHost();
        if (!tls && !"mqtt".equals(uri.getScheme()) || host == null) {
            throw notOne(null);
        }
        String path = Optional.ofNullable(uri.getPath()).orElse("").replaceAll("^/+|/+$", "");
        if (path.contains("+") || path.contains("#")) {
            throw new IOException("the topic's beginning must not hold + or #");
        }
        int port = uri.getPort() >= 0 ? uri.getPort() : tls ? TLS_PORT : PLAIN_PORT;
        return new BrokerAddress(
                host,
                port,
                tls,
                path.isEmpty() ? USUAL_BASE : path,
                Optional.ofNullable(uri.getUserInfo()).map(BrokerAddress::user));
    }

    private static User user(String info) {
        int colon = info.indexOf(':');
        String name = colon < 0 ? info : info.substring(0, colon);
        String password = colon < 0 ? "" : info.substring(colon + 1);
        return new User(name, password.getBytes(StandardCharsets.UTF_8));
    }

    /** The address itself is not repeated: it may hold a password. */
    private static IOException notOne(@Nullable Exception cause) {
        return new IOException("the address is none of a broker; it should be like mqtt://192.168.1.5:1883", cause);
    }

    /** The topic of all gates' lines. */
    String passes() {
        return base + "/v1/+/pass";
    }

    /** The topic of what gates say of themselves. */
    String states() {
        return base + "/v1/+/status";
    }
}
