package org.tugtest.protect;

/**
 * A plain resistance between two nodes of a {@link FaultGrid}.
 *
 * @param ohms above 0
 * @param drop volts that it takes besides from what flows through it to a fault in a dead end
 * @param gate whether it can open
 */
record Conductor(int a, int b, double ohms, double drop, boolean gate) {}
