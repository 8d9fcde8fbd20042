/** The set-ups of one car as a tree: each made from another by a change, none ever altered, any of them on the car again. */
package org.lapwright.core.car.history;
