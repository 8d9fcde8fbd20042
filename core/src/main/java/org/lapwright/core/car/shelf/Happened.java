package org.lapwright.core.car.shelf;

import java.time.Instant;

/**
 * What happened to which part, and when.
 *
 * @param part number of the part
 * @param event what
 * @param at when
 */
public record Happened(long part, PartEvent event, Instant at) {}
