/** Lines on standard output that a CI system shows beside the changed lines. */
@NullMarked
package org.tugtest.report.annotations;

import org.jspecify.annotations.NullMarked;
