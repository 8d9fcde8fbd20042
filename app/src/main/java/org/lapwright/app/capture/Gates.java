package org.lapwright.app.capture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import org.lapwright.app.usecase.ExampleGarage;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SoundWatch;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.Sources;
import org.lapwright.app.usecase.capture.TimingSource;

/** All timing sources that there are. */
public final class Gates implements Sources {
    private final LongSupplier clock;

    /**
     * Sources.
     *
     * @param clock the monotonic clock of this machine, ns
     */
    public Gates(LongSupplier clock) {
        this.clock = clock;
    }

    @Override
    public PassSink runPage(String address, SourceNews news) throws IOException {
        return RunPageSink.to(address, news);
    }

    @Override
    public TimingSource lines(InputStream in) {
        return new WireSource(in);
    }

    @Override
    public TimingSource serial(String port) throws IOException {
        return SerialSource.open(port, clock);
    }

    @Override
    public TimingSource mqtt(String address) throws IOException {
        return MqttSource.open(BrokerAddress.parse(address), clock);
    }

    @Override
    public TimingSource simulated(String car, double speed) throws IOException {
        List<KeptComparison> all = ExampleGarage.comparisons();
        return all.stream()
                .filter(each -> car.isEmpty() || each.car().equalsIgnoreCase(car))
                .findFirst()
                .map(found -> new SimulatedSource(found, speed))
                .orElseThrow(() -> new IOException("the example garage has no car %s; it has %s"
                        .formatted(
                                car,
                                all.stream().map(each -> each.car()).distinct().collect(Collectors.joining(", ")))));
    }

    @Override
    public TimingSource recording(Path file, SoundWatch watch) throws IOException {
        return SoundRecording.open(file, watch);
    }

    @Override
    public TimingSource soundCard(SoundWatch watch) throws IOException {
        return SoundCard.open(watch, clock);
    }
}
