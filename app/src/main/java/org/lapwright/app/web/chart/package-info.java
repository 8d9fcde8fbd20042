/**
 * Drawings as places and words; the templates turn them into SVG.
 *
 * <p>Along the page places are percentages, so that one drawing fits a phone and a desk without a script. Each drawing
 * has a summary in words for those who do not see it.
 */
package org.lapwright.app.web.chart;
