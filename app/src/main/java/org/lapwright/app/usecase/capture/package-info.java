/** What a timing source hands its passes to. */
package org.lapwright.app.usecase.capture;
