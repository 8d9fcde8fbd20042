/** What the model of car and track answers: what a set-up works out to, and the best lap that it could do. */
package org.lapwright.app.usecase.physics;
