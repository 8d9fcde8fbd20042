package org.lapwright.app.usecase;

import java.time.Instant;

/**
 * A comparison with the number and time it was saved under.
 *
 * @param id its number
 * @param savedAt when
 * @param kept what was saved
 */
public record SavedComparison(long id, Instant savedAt, KeptComparison kept) {}
