/** What the looms are made of, in metres and grams, and what is missing from the sums. */
@NullMarked
package org.tugtest.report.html.totals;

import org.jspecify.annotations.NullMarked;
