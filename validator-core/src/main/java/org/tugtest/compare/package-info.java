/** What a change to a harness means: its circuits, its changes, and the age of its findings. */
@NullMarked
package org.tugtest.compare;

import org.jspecify.annotations.NullMarked;
