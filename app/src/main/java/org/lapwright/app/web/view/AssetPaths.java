package org.lapwright.app.web.view;

/**
 * Where the bundled files of a page are.
 *
 * @param css the style sheet
 * @param htmx the library for partial pages
 * @param script our own script
 * @param icon the picture in the browser's tab
 */
public record AssetPaths(String css, String htmx, String script, String icon) {}
