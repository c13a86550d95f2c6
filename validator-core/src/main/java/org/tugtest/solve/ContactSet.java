package org.tugtest.solve;

/** The branches of a circuit that stay as they are for one set of pulled coils. */
final class ContactSet {
  private ContactSet() {}

  /** The linear network with these coils pulled; sources, diodes and loads are still open in it. */
  static Linear linear(Circuit circuit, boolean[] pulled) {
    Linear linear = new Linear(circuit);
    for (int i = 0; i < linear.branches(); i++) {
      Branch branch = circuit.branches().get(i);
      if (branch instanceof Branch.Resistor resistor) {
        linear.set(i, siemens(resistor.ohms()), 0, 0);
      } else if (branch instanceof Branch.Coil coil) {
        linear.set(i, siemens(coil.ohms()), 0, 0);
      } else if (branch instanceof Branch.Contact contact
          && contact.closed(pulled[contact.coil()])) {
        linear.set(i, siemens(contact.ohms()), 0, 0);
      }
    }
    return linear;
  }

  private static double siemens(double ohms) {
    return ohms < Branch.LEAST_OHMS ? Linear.METAL : 1 / ohms;
  }
}
