/** The fuse map and the isolation card. */
@NullMarked
package org.tugtest.report.html.fuses;

import org.jspecify.annotations.NullMarked;
