/** What a proposal to merge two pairs of connectors makes of the loom. */
@NullMarked
package org.tugtest.bench.merge;

import org.jspecify.annotations.NullMarked;
