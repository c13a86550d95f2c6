/** A report as JUnit XML, so that CI servers show every rule that passed, too. */
@NullMarked
package org.tugtest.report.junit;

import org.jspecify.annotations.NullMarked;
