package org.tugtest.network;

/** What a reference turns out to name, as the end of a wire. */
public sealed interface Resolution {
  /**
   * A contact or splice.
   *
   * @param implied it exists only because wires of a sketch name it
   */
  record Found(Point point, boolean implied) implements Resolution {}

  /** No connector, device or splice has that id. */
  record OwnerUnknown(String owner) implements Resolution {}

  /** The connector or device is there, the cavity or pin is not. */
  record PinUnknown(Point.Kind kind, String owner, String pin) implements Resolution {}

  /**
   * The thing is there, but no wire can end on it.
   *
   * @param thing as the file names it
   * @param why goes on after the name of the thing
   * @param remedy what to write instead
   */
  record NoContact(String thing, String why, String remedy) implements Resolution {}
}
