package org.lapwright.app.web;

import org.lapwright.app.usecase.DescribeLaps;
import org.lapwright.app.usecase.Glossary;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KeepComparison;
import org.lapwright.app.usecase.KnownDriver;
import org.lapwright.app.usecase.ShowKept;
import org.lapwright.app.usecase.ShowLadder;

/**
 * The questions that the pages can answer.
 *
 * @param describeLaps what laps amount to
 * @param judgeChange did the change help
 * @param knownDriver what is known of the driver
 * @param keepComparison keep it
 * @param showKept what was kept
 * @param showLadder which car is fastest
 * @param glossary what a word means
 * @param physics cars and tracks
 * @param bench changes
 * @param run laps while they come in
 */
public record UseCases(
        DescribeLaps describeLaps,
        JudgeChange judgeChange,
        KnownDriver knownDriver,
        KeepComparison keepComparison,
        ShowKept showKept,
        ShowLadder showLadder,
        Glossary glossary,
        PhysicsCases physics,
        BenchCases bench,
        RunCases run) {}
