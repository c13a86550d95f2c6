/** The immutable whole that every report writer reads, and where reports go. */
@NullMarked
package org.tugtest.report;

import org.jspecify.annotations.NullMarked;
