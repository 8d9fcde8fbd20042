/** The editor of a track: what is typed, what a press does to it, and what it comes to. */
package org.lapwright.app.web.track.editor;
