/** What is measured and tried again after a change: what it touched, and no more. */
@NullMarked
package org.tugtest.bench.retest;

import org.jspecify.annotations.NullMarked;
