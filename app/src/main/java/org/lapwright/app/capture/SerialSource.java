package org.lapwright.app.capture;

import com.fazecast.jSerialComm.SerialPort;
import java.io.IOException;
import java.util.Arrays;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.TimingSource;

/** A gate on a serial line, 115,200 baud, 8 bits, no parity, 1 stop bit. A cable that was pulled is waited for. */
public final class SerialSource implements TimingSource {
    private static final int BAUD = 115_200;
    private static final int WAIT_MS = 200;
    private static final int RETRY_MS = 300;
    private static final long SILENT_NS = 5_000_000_000L;

    private final String name;
    private final LongSupplier clock;
    private SerialPort port;

    private SerialSource(String name, LongSupplier clock, SerialPort port) {
        this.name = name;
        this.clock = clock;
        this.port = port;
    }

    /**
     * Opens a port.
     *
     * @param name as the system names it
     * @param clock the monotonic clock of this machine, ns
     * @throws IOException if it cannot be opened; names the ports that there are
     */
    static SerialSource open(String name, LongSupplier clock) throws IOException {
        SerialPort port = port(name);
        if (!port.openPort()) {
            throw new IOException(
                    "there is no such port, another program has it, or it is not allowed; " + portsHere());
        }
        return new SerialSource(name, clock, port);
    }

    private static String portsHere() {
        String ports = Arrays.stream(SerialPort.getCommPorts())
                .map(each -> each.getSystemPortPath())
                .collect(Collectors.joining(", "));
        return ports.isEmpty() ? "no serial port is there" : "the ports here are " + ports;
    }

    private static SerialPort port(String name) throws IOException {
        try {
            SerialPort port = SerialPort.getCommPort(name);
            port.setComPortParameters(BAUD, 8, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
            port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, WAIT_MS, 0);
            return port;
        } catch (RuntimeException none) {
            // The library's own exception for a name that it does not know is unchecked.
            throw new IOException("there is no such port; " + portsHere(), none);
        }
    }

    @Override
    public void listen(PassSink sink, SourceNews news) throws IOException {
        GateLines lines = new GateLines("serial", true);
        try {
            while (read(lines, sink, news)) {
                news.gone("the serial line is broken; is the cable in?");
                lines.broken();
                if (!reopened()) {
                    return;
                }
                news.back();
            }
        } finally {
            port.closePort();
        }
    }

    /** Reads until the line breaks; false where no more is wanted. */
    private boolean read(GateLines lines, PassSink sink, SourceNews news) {
        LineFeed feed = new LineFeed();
        byte[] bytes = new byte[1024];
        long heardNs = System.nanoTime();
        boolean silent = false;
        for (int read = port.readBytes(bytes, bytes.length); read >= 0; read = port.readBytes(bytes, bytes.length)) {
            if (Thread.currentThread().isInterrupted()) {
                return false;
            }
            if (read > 0) {
                heardNs = System.nanoTime();
                if (silent) {
                    silent = false;
                    news.back();
                }
            } else if (!silent && System.nanoTime() - heardNs > SILENT_NS) {
                silent = true;
                news.gone("nothing has come for 5 s, not even a heartbeat");
            }
            for (String line : feed.take(bytes, read)) {
                if (!Handing.on(lines.take(line, clock.getAsLong(), news), sink)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean reopened() {
        port.closePort();
        while (true) {
            try {
                Thread.sleep(RETRY_MS);
                SerialPort again = port(name);
                if (again.openPort()) {
                    port = again;
                    return true;
                }
            } catch (IOException notYet) {
                // The port is not there: it is asked for again.
            } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
                return false;
            }
        }
    }
}
