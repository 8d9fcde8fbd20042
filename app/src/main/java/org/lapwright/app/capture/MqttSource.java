package org.lapwright.app.capture;

import com.hivemq.client.mqtt.MqttClient;
import com.hivemq.client.mqtt.MqttClientSslConfig;
import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.lifecycle.MqttClientDisconnectedContext;
import com.hivemq.client.mqtt.mqtt5.Mqtt5AsyncClient;
import com.hivemq.client.mqtt.mqtt5.Mqtt5ClientBuilder;
import com.hivemq.client.mqtt.mqtt5.message.publish.Mqtt5Publish;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionException;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.TimingSource;

/**
 * Gates that publish their lines to an MQTT broker, each under its own name. The broker keeps what comes while the connection is
 * broken, for an hour; what it sends twice is taken once.
 */
public final class MqttSource implements TimingSource {
    private static final int KEPT_S = 3600;
    private static final int LONGEST_PAYLOAD = 8192;
    private static final int MOST_GATES = 64;
    private static final int LONGEST_GATE = 48;

    private final LongSupplier clock;
    private final BlockingQueue<Event> events = new LinkedBlockingQueue<>();
    private final Map<String, GateLines> gates = new HashMap<>();
    private final Mqtt5AsyncClient client;
    private volatile boolean connected;

    /** What comes from the client's threads, in its order. */
    private sealed interface Event {
        record Text(String gate, String kind, boolean old, String text, long arrivalNs) implements Event {}

        record Gone() implements Event {}

        record Back() implements Event {}
    }

    private MqttSource(BrokerAddress address, LongSupplier clock) {
        this.clock = clock;
        Mqtt5ClientBuilder builder = MqttClient.builder()
                .useMqttVersion5()
                .identifier("lapwright-" + UUID.randomUUID())
                .serverHost(address.host())
                .serverPort(address.port())
                .addConnectedListener(context -> connected())
                .addDisconnectedListener(this::disconnected);
        if (address.tls()) {
            builder = builder.sslConfig(MqttClientSslConfig.builder().build());
        }
        client = builder.buildAsync();
    }

    /**
     * Connects and subscribes.
     *
     * @param address where the broker is
     * @param clock the monotonic clock of this machine, ns
     * @throws IOException if it does not answer, or refuses
     */
    static MqttSource open(BrokerAddress address, LongSupplier clock) throws IOException {
        MqttSource source = new MqttSource(address, clock);
        var connect = source.client.connectWith().cleanStart(false).sessionExpiryInterval(KEPT_S);
        if (address.user().isPresent()) {
            BrokerAddress.User user = address.user().get();
            connect = connect.simpleAuth()
                    .username(user.name())
                    .password(user.password())
                    .applySimpleAuth();
        }
        try {
            connect.send().join();
            source.subscribe(address.passes());
            source.subscribe(address.states());
            return source;
        } catch (CompletionException refused) {
            throw new IOException(
                    "no broker answers at %s:%d, or it refuses".formatted(address.host(), address.port()), refused);
        }
    }

    private void subscribe(String topic) {
        client.subscribeWith()
                .topicFilter(topic)
                .qos(MqttQos.AT_LEAST_ONCE)
                .callback(this::came)
                .send()
                .join();
    }

    private void connected() {
        if (connected) {
            events.add(new Event.Back());
        }
        connected = true;
    }

    private void disconnected(MqttClientDisconnectedContext context) {
        if (connected) {
            events.add(new Event.Gone());
            context.getReconnector().reconnect(true).delay(1, TimeUnit.SECONDS);
        }
    }

    private void came(Mqtt5Publish message) {
        List<String> levels = message.getTopic().getLevels();
        byte[] payload = message.getPayloadAsBytes();
        String text = new String(payload, 0, Math.min(payload.length, LONGEST_PAYLOAD), StandardCharsets.US_ASCII);
        events.add(new Event.Text(
                levels.get(levels.size() - 2),
                levels.get(levels.size() - 1),
                message.isRetain(),
                text,
                clock.getAsLong()));
    }

    @Override
    public void listen(PassSink sink, SourceNews news) {
        try {
            boolean wanted = true;
            boolean away = false;
            while (wanted) {
                Event event = events.take();
                if (event instanceof Event.Text text) {
                    wanted = take(text, sink, news);
                } else if (event instanceof Event.Back && away) {
                    away = false;
                    news.back();
                } else if (event instanceof Event.Gone && !away) {
                    // Each try that fails tells it again; once is enough.
                    away = true;
                    news.gone("the broker is gone");
                    gates.values().forEach(GateLines::broken);
                }
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        } finally {
            connected = false;
            client.disconnect();
        }
    }

    private boolean take(Event.Text message, PassSink sink, SourceNews news) {
        String name = message.gate();
        if (!gates.containsKey(name)
                && (gates.size() >= MOST_GATES || name.isEmpty() || name.length() > LONGEST_GATE)) {
            news.unreadable("a gate's name must have 1 to %d characters, and %d gates are the most"
                    .formatted(LONGEST_GATE, MOST_GATES));
            return true;
        }
        GateLines gate = gates.computeIfAbsent(name, each -> new GateLines("mqtt " + each, true));
        if (message.kind().equals("status")) {
            state(message, gate, news);
            return true;
        }
        if (message.old()) {
            news.unreadable(
                    "gate %s: a pass that the broker had kept says nothing of now; do not publish passes as retained"
                            .formatted(name));
            return true;
        }
        boolean wanted = true;
        for (String line : message.text().split("\n", -1)) {
            wanted &= Handing.on(gate.take(line, message.arrivalNs(), news), sink);
        }
        return wanted;
    }

    private static void state(Event.Text message, GateLines gate, SourceNews news) {
        if (message.text().strip().equals("offline")) {
            gate.broken();
            news.gone("gate %s is offline".formatted(message.gate()));
        } else if (!message.old()) {
            news.back();
        }
    }
}
