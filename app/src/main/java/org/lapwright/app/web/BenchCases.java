package org.lapwright.app.web;

import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.advice.BestSetUpSearches;
import org.lapwright.app.usecase.advice.OwnLaps;
import org.lapwright.app.usecase.advice.ScoreForecasts;
import org.lapwright.app.usecase.advice.SuggestChanges;
import org.lapwright.app.usecase.bench.ForeseeChange;
import org.lapwright.app.usecase.bench.KeepPhoto;
import org.lapwright.app.usecase.bench.KeepShelf;
import org.lapwright.app.usecase.bench.LogChange;
import org.lapwright.app.usecase.bench.ShowWear;

/**
 * The questions of the bench that the pages can answer.
 *
 * @param logChange log it, undo it, go back
 * @param foreseeChange what it brings
 * @param suggestChanges what to try next
 * @param bestSetUps the fastest set-up there is in a car
 * @param ownLaps what the laps kept tell of a car
 * @param scoreForecasts how good the forecasts were
 * @param keepShelf which parts are where, and how worn
 * @param showWear what the laps on a part do to the pace
 * @param keepPhoto what a car looks like
 * @param ownClasses in which class a car is run, and what that allows
 * @param labels tags of cars, and which are put away
 */
public record BenchCases(
        LogChange logChange,
        ForeseeChange foreseeChange,
        SuggestChanges suggestChanges,
        BestSetUpSearches bestSetUps,
        OwnLaps ownLaps,
        ScoreForecasts scoreForecasts,
        KeepShelf keepShelf,
        ShowWear showWear,
        KeepPhoto keepPhoto,
        OwnList ownClasses,
        OwnList labels) {}
