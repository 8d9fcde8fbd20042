/** Passes from sound: a light gate or a contact on the sound card, the same detector for a recording and for what comes in live. */
package org.lapwright.core.laps.sound;
