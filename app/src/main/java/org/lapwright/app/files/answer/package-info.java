/** What the program has worked out about cars and tracks, as the JSON that its commands print. */
package org.lapwright.app.files.answer;
