/**
 * Files and pasted text: lap lists, car and track files. What was understood is shown back, never guessed in silence.
 *
 * <p>Reading returns what could be read together with the {@link org.lapwright.app.files.Problem}s, so that one bad
 * line never spoils the rest. Nothing depends on the reader's locale.
 */
package org.lapwright.app.files;
