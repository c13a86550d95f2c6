/** What the rooms of a page print of wires and figures. */
@NullMarked
package org.tugtest.report.html.text;

import org.jspecify.annotations.NullMarked;
