/** Everything on one contact, wire, connector, device or splice, both ways, as lines to read. */
@NullMarked
package org.tugtest.trace;

import org.jspecify.annotations.NullMarked;
