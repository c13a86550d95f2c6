package org.tugtest.network;

/** What a connector is plugged into. */
public sealed interface Mate {
  /** As the files write it. */
  String text();

  /** The other half on a loom. */
  record OfConnector(String connector) implements Mate {
    @Override
    public String text() {
      return connector;
    }
  }

  /** A port of a device. */
  record OfPort(String device, String port) implements Mate {
    @Override
    public String text() {
      return device + "." + port;
    }
  }
}
