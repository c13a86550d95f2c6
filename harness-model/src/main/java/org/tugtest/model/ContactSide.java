package org.tugtest.model;

/** Which half of a contact a thing is. */
public enum ContactSide implements Word {
  /** The male half. */
  PIN,
  /** The female half. */
  SOCKET,
  /** A ring terminal, for a stud. */
  RING
}
