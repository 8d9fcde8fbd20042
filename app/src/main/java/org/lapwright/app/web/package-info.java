/**
 * The pages and the JSON interface: routes, the checks at the door, the bundled files.
 *
 * <p>Start at {@link org.lapwright.app.web.WebApp}. Nothing is kept between two requests: a page carries what it needs,
 * and what is saved is saved by a use case. {@code compare} holds what the racer typed, {@code chart} the places on the
 * drawings, {@code view} what the templates show; the templates are in {@code src/main/jte}.
 */
package org.lapwright.app.web;
