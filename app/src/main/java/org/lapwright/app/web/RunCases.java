package org.lapwright.app.web;

import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.run.DriveLive;
import org.lapwright.app.usecase.run.ListenHere;

/**
 * The questions of the track side that the pages can answer.
 *
 * @param driveLive does it help, while the car runs
 * @param listenHere laps of a gate on this computer
 * @param ownGate which gate that is
 * @param ownScreening which of several tweaks matter
 */
public record RunCases(DriveLive driveLive, ListenHere listenHere, OwnList ownGate, OwnList ownScreening) {}
