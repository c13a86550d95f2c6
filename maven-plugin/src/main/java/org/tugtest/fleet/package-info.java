/**
 * Many roots in one run: read, checked and held against their base side by side, with the same
 * result as one by one.
 */
@NullMarked
package org.tugtest.fleet;

import org.jspecify.annotations.NullMarked;
