/** Sections through the bundles: packed circles in their coverings. */
@NullMarked
package org.tugtest.report.html.bundles;

import org.jspecify.annotations.NullMarked;
