/** How a loom is rung out: what is measured, what the meter should show, what it cannot see. */
@NullMarked
package org.tugtest.bench.ringout;

import org.jspecify.annotations.NullMarked;
