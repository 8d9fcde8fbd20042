package org.lapwright.app.web.view;

/**
 * Something that could not be done.
 *
 * @param shell around it
 * @param what happened
 * @param remedy what is safe and what to do
 * @param link where to go on
 * @param linkText what the link says
 */
public record ProblemPage(Shell shell, String what, String remedy, String link, String linkText) {}
