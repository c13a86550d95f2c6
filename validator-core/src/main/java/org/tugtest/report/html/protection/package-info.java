/** Charts of when each fuse opens and what the wires behind it stand. */
@NullMarked
package org.tugtest.report.html.protection;

import org.jspecify.annotations.NullMarked;
