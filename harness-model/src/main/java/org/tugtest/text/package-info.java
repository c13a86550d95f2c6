/** The lines of a file, places in it, JSON Pointers, and the problems met while reading. */
@NullMarked
package org.tugtest.text;

import org.jspecify.annotations.NullMarked;
