/** Currents and volts of a network of resistances, sources, loads, diodes and relays. */
@NullMarked
package org.tugtest.solve;

import org.jspecify.annotations.NullMarked;
