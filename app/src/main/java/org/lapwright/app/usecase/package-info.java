/**
 * One class for each question a user asks, and the ports they need from outside.
 *
 * <p>The command line and the pages both call these, so they cannot drift apart.
 */
package org.lapwright.app.usecase;
