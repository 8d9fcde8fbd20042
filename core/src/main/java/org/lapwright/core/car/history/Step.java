package org.lapwright.core.car.history;

import java.util.OptionalLong;

/**
 * One set-up in a car's history.
 *
 * @param id its number
 * @param parent the set-up that it was made from; empty for a first one
 * @param kind which kind of change made it, as {@link org.lapwright.core.car.change.ChangeKind#code}; a newer version may know
 *     more of them
 * @param words what was done, as it was said when it was logged
 */
public record Step(long id, OptionalLong parent, String kind, String words) {}
