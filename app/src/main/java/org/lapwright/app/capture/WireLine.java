package org.lapwright.app.capture;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One line of the text protocol of a gate ({@code docs/timing.md}): {@code P,<seq>,<lane>,<t_us>,<edge>*HH} for a pass, with
 * {@code ,<gate>} before the asterisk where it is that of a section gate,
 * {@code H,<boot>,<t_us>,<dropped>*HH} for a heartbeat, {@code #} for a comment. HH is the exclusive or of all characters before the
 * asterisk, as in NMEA 0183, in two hexadecimal digits. Any text gives some line; none throws.
 */
sealed interface WireLine {
    /** A pass; {@code edge} is 1 where the beam was broken, 0 where it came back; {@code gate} is 0 at the timing line. */
    record Passed(long sequence, int lane, long timeUs, int edge, int gate) implements WireLine {}

    /** The sender is alive. */
    record Heartbeat(String boot, long timeUs, long dropped) implements WireLine {}

    /** What gpiomon prints of an input: its name, whether its level rose, and the kernel's stamp. */
    record Edge(String input, boolean rising, long timeNs) implements WireLine {}

    /** Nothing to do. */
    record Comment() implements WireLine {}

    /** Not to be believed. */
    record Bad(String why) implements WireLine {}

    /** Longer lines are noise. */
    int LONGEST = 120;

    /** A gate cannot know more lanes, nor count or time beyond what a long holds. */
    Pattern PASS = Pattern.compile("P,(\\d{1,15}),(\\d{1,2}),(\\d{1,15}),([01])(?:,(\\d{1,2}))?");

    Pattern HEARTBEAT = Pattern.compile("H,([0-9A-Za-z_-]{1,32}),(\\d{1,15}),(\\d{1,15})");

    /** gpiomon of libgpiod 1.x. */
    Pattern GPIO_1 = Pattern.compile(
            "event:\\s+(RISING|FALLING) EDGE offset: (\\d{1,5}) timestamp: \\[\\s*([1-8]?\\d{1,9})\\.(\\d{9})\\]");

    /** gpiomon of libgpiod 2.x. */
    Pattern GPIO_2 = Pattern.compile("([1-8]?\\d{1,9})\\.(\\d{9})\\t(rising|falling)\\t(\\S.{0,60})");

    /** Reads a line. */
    static WireLine parse(String text) {
        String line = text.strip();
        if (line.isEmpty() || line.startsWith("#")) {
            return new Comment();
        }
        if (line.length() > LONGEST) {
            return new Bad("longer than " + LONGEST + " characters");
        }
        Matcher first = GPIO_1.matcher(line);
        if (first.matches()) {
            return new Edge(first.group(2), first.group(1).equals("RISING"), ns(first.group(3), first.group(4)));
        }
        Matcher second = GPIO_2.matcher(line);
        if (second.matches()) {
            return new Edge(second.group(4), second.group(3).equals("rising"), ns(second.group(1), second.group(2)));
        }
        return protocol(line);
    }

    private static long ns(String seconds, String fraction) {
        return Long.parseLong(seconds) * 1_000_000_000L + Long.parseLong(fraction);
    }

    private static WireLine protocol(String line) {
        int star = line.lastIndexOf('*');
        if (star < 0 || star + 3 != line.length()) {
            return new Bad("no checksum at its end");
        }
        String body = line.substring(0, star);
        String sum = line.substring(star + 1);
        if (!sum.equalsIgnoreCase(checksum(body))) {
            return new Bad("checksum %s, its characters give %s".formatted(sum, checksum(body)));
        }
        Matcher pass = PASS.matcher(body);
        if (pass.matches()) {
            return new Passed(
                    Long.parseLong(pass.group(1)),
                    Integer.parseInt(pass.group(2)),
                    Long.parseLong(pass.group(3)),
                    Integer.parseInt(pass.group(4)),
                    pass.group(5) == null ? 0 : Integer.parseInt(pass.group(5)));
        }
        Matcher beat = HEARTBEAT.matcher(body);
        return beat.matches()
                ? new Heartbeat(beat.group(1), Long.parseLong(beat.group(2)), Long.parseLong(beat.group(3)))
                : new Bad("neither a pass nor a heartbeat");
    }

    /** The checksum of what stands before the asterisk. */
    static String checksum(String body) {
        int sum = 0;
        for (int i = 0; i < body.length(); i++) {
            sum ^= body.charAt(i) & 0xFF;
        }
        return "%02X".formatted(sum);
    }
}
