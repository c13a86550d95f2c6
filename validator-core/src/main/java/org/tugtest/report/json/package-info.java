/** The whole of a report as JSON, for programs; the schema ships as a resource. */
@NullMarked
package org.tugtest.report.json;

import org.jspecify.annotations.NullMarked;
