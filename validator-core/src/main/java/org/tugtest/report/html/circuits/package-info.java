/** The circuits of loads: from a source through fuse, contacts and wires to the load and back. */
@NullMarked
package org.tugtest.report.html.circuits;

import org.jspecify.annotations.NullMarked;
