/** The rules of the classes in which an owner runs cars: what each allows, and what of a car breaks them. */
package org.lapwright.core.car.rules;
