/** Seeded harnesses of any size, and how long they take as ratios to one pass over their bytes. */
@NullMarked
package org.tugtest.benchmark;

import org.jspecify.annotations.NullMarked;
