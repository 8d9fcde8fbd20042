package org.lapwright.app.usecase.capture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

/** Timing sources that a command can listen to. */
public interface Sources {
    /**
     * Where passes go that are to be judged on the page Run of a program that is serving.
     *
     * @param address of the program
     * @param news is told when it does not answer, and what it does not take
     * @throws IOException if the address is none
     */
    PassSink runPage(String address, SourceNews news) throws IOException;

    /** A gate that sends lines of text, its own or those of {@code gpiomon}, from a pipe or a file. */
    TimingSource lines(InputStream in);

    /**
     * A gate on a serial line, by its name.
     *
     * @throws IOException if there is no such port, or another program has it
     */
    TimingSource serial(String port) throws IOException;

    /**
     * Gates that publish to an MQTT broker.
     *
     * @throws IOException if the address is none, or no broker answers there
     */
    TimingSource mqtt(String address) throws IOException;

    /**
     * A gate that is none: the laps of a car of the example garage, sent as a gate would send them.
     *
     * @param car its name; empty for the first
     * @param speed how many of its seconds go by in a second
     * @throws IOException if there is no such car; names those that there are
     */
    TimingSource simulated(String car, double speed) throws IOException;

    /**
     * A recording of a gate on the sound card: its first channel is lane 1, its second lane 2.
     *
     * @param watch what is wanted of it
     * @throws IOException if it cannot be read or is no recording
     */
    TimingSource recording(Path file, SoundWatch watch) throws IOException;

    /**
     * A gate on the sound card, live.
     *
     * @param watch what is wanted of it
     * @throws IOException if there is no input to listen to
     */
    TimingSource soundCard(SoundWatch watch) throws IOException;
}
