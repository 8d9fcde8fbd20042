package org.lapwright.app.web.track;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * What is shown, and what else there is to choose from. It is the page's address.
 *
 * @param tracks names of all tracks
 * @param track the track shown
 * @param lanes its lanes
 * @param lane the lane shown
 * @param cars names of all cars
 * @param car the car on it; empty when there is none
 * @param against the car it is held against; empty when there is none
 * @param show {@code speed} or {@code limits}
 */
public record TrackChoice(
        List<String> tracks,
        String track,
        List<String> lanes,
        String lane,
        List<String> cars,
        String car,
        String against,
        String show) {
    /** What colours the lane unless something else is asked for. */
    public static final String SPEED = "speed";

    /** The other choice. */
    public static final String LIMITS = "limits";

    /** Copies the lists. */
    public TrackChoice {
        tracks = List.copyOf(tracks);
        lanes = List.copyOf(lanes);
        cars = List.copyOf(cars);
    }

    /** Whether the lane is coloured by what limits the car. */
    public boolean byLimit() {
        return show.equals(LIMITS);
    }

    /** The same page coloured otherwise. */
    public String showing(String other) {
        return address(lane, other);
    }

    /** The same page for another lane. */
    public String onLane(String other) {
        return address(other, show);
    }

    /** Where to ask how sure the lap on a lane is. */
    public String howSure(String onLane) {
        return "/track/how-sure?track=" + encoded(track) + "&lane=" + encoded(onLane) + "&car=" + encoded(car);
    }

    /** The page of a track. */
    public static String page(String track) {
        return "/track?track=" + encoded(track);
    }

    /** The file of the track. */
    public String download() {
        return "/track/download?track=" + encoded(track);
    }

    /** The track in the editor. */
    public String edit() {
        return "/track/draw?track=" + encoded(track);
    }

    /** The track on one page, to scale. */
    public String print() {
        return print(track);
    }

    /** A track on one page, to scale. */
    public static String print(String track) {
        return "/track/print?track=" + encoded(track);
    }

    /** A track on sheets to glue together. */
    public static String tiles(String track, int scale) {
        return "/track/tiles?track=" + encoded(track) + "&scale=" + scale;
    }

    /** The guided measurement of its rails. */
    public String rails() {
        return "/track/rails?track=" + encoded(track);
    }

    /** The lanes as a drawing in true size. */
    public String lanesSvg() {
        return "/track/lanes.svg?track=" + encoded(track);
    }

    private String address(String lane, String show) {
        return page(track) + "&lane=" + encoded(lane) + "&car=" + encoded(car) + "&against=" + encoded(against)
                + "&show=" + show;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
