/** In which steps a loom is changed into another one on the bench. */
@NullMarked
package org.tugtest.bench.rework;

import org.jspecify.annotations.NullMarked;
