/**
 * What each single fault takes away or leaves live, and which faults a set of symptoms points to.
 */
@NullMarked
package org.tugtest.bench.whatif;

import org.jspecify.annotations.NullMarked;
