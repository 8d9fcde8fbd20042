/** The page on which the owner writes down the rules of classes. */
@NullMarked
package org.lapwright.app.web.rules;

import org.jspecify.annotations.NullMarked;
