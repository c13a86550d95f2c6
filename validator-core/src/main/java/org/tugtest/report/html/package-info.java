/** The report as pages for people: one file each, readable from disk, without network or server. */
@NullMarked
package org.tugtest.report.html;

import org.jspecify.annotations.NullMarked;
