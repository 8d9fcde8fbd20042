package org.lapwright.app.web;

import org.lapwright.app.usecase.bench.ForeseeChange;
import org.lapwright.app.usecase.bench.LogChange;

/**
 * The questions of the bench that the pages can answer.
 *
 * @param logChange log it, undo it, go back
 * @param foreseeChange what it brings
 */
public record BenchCases(LogChange logChange, ForeseeChange foreseeChange) {}
