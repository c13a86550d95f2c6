package org.tugtest.protect;

/**
 * Something between two nodes of a {@link FaultGrid} that gives, or of which the current is wanted:
 * a source, a fuse on a ring, a diode. Current enters the network at {@code to}.
 *
 * @param from the node it draws from: minus of a source, anode of a diode
 * @param to the node it gives to: plus of a source, cathode of a diode
 * @param volts by which it lifts {@code to} over {@code from} when nothing flows
 * @param ohms its resistance to current that enters at {@code to}
 * @param reverseOhms its resistance the other way; infinite when nothing can flow so
 * @param mostA the greatest current it gives; infinite when it has no such limit
 */
record Arm(int from, int to, double volts, double ohms, double reverseOhms, double mostA) {
  /** A resistance. */
  static Arm resistor(int from, int to, double ohms) {
    return new Arm(from, to, 0, ohms, ohms, Double.POSITIVE_INFINITY);
  }
}
