package org.lapwright.app.web;

import org.lapwright.app.usecase.physics.ForecastLap;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.usecase.physics.WorkOutNumbers;

/**
 * The questions about cars and tracks that the pages can answer.
 *
 * @param ownGarage which cars and tracks are there
 * @param workOutNumbers what a set-up works out to
 * @param forecastLap how sure its best lap is
 */
public record PhysicsCases(OwnGarage ownGarage, WorkOutNumbers workOutNumbers, ForecastLap forecastLap) {}
