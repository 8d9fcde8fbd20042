package org.lapwright.app.web.view;

import org.lapwright.app.usecase.GarageStore.ExampleState;

/**
 * What a page says about the example garage.
 *
 * @param state what there is of it
 * @param back the page to come back to
 */
public record ExampleView(ExampleState state, String back) {
    /** On a page that has nothing to do with it. */
    public static final ExampleView NONE = new ExampleView(ExampleState.ABSENT, "/");

    /** Whether the banner is shown. */
    public boolean isShown() {
        return state == ExampleState.SHOWN;
    }

    /** Whether it can be brought back. */
    public boolean isRemoved() {
        return state == ExampleState.REMOVED;
    }
}
