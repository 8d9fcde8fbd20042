package org.lapwright.app.web;

import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.physics.ForecastLap;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.usecase.physics.PredictLap;
import org.lapwright.app.usecase.physics.WorkOutNumbers;

/**
 * The questions about cars and tracks that the pages can answer.
 *
 * @param garage which cars and tracks there are
 * @param pieces which kinds of track pieces there are
 * @param workOutNumbers what a set-up works out to
 * @param predictLap what is the best lap
 * @param forecastLap how sure is it
 */
public record PhysicsCases(
        OwnGarage garage,
        OwnList pieces,
        WorkOutNumbers workOutNumbers,
        PredictLap predictLap,
        ForecastLap forecastLap) {}
