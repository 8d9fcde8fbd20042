/** Photos in: what a camera wrote becomes a small JPEG that says nothing but what it shows. */
@NullMarked
package org.lapwright.app.files.photo;

import org.jspecify.annotations.NullMarked;
