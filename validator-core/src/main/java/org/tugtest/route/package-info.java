/** Where wires run: ways along the layout, lengths, bundles, packing, surroundings and mass. */
@NullMarked
package org.tugtest.route;

import org.jspecify.annotations.NullMarked;
